import * as devices from './devices/routes.ts';
import * as things from './drawer/item-routes.ts';
import * as drawer from './drawer/routes.ts';
import * as assemblies from './machines/assembly-routes.ts';
import * as machines from './machines/routes.ts';
import * as madeAgain from './made/again-routes.ts';
import * as finish from './made/finish-routes.ts';
import * as made from './made/routes.ts';
import * as partEdits from './parts/edit-routes.ts';
import * as parts from './parts/routes.ts';
import * as acts from './routings/acts-routes.ts';
import * as edits from './routings/edit-routes.ts';
import * as hold from './routings/hold-routes.ts';
import * as measured from './routings/measured-routes.ts';
import * as routings from './routings/routes.ts';
import * as search from './search/routes.ts';
import * as setEdits from './sets/edit-routes.ts';
import * as sets from './sets/routes.ts';
import * as settings from './settings/routes.ts';
import * as sheets from './sheets/routes.ts';
import * as shop from './shop/routes.ts';
import * as shopMachines from './shop-machines/routes.ts';
import * as sums from './sums/routes.ts';
import * as today from './today/routes.ts';
import * as tools from './tools/routes.ts';
import { get, getTrusted, post, postBare, postByAnyone, type Route } from './visit.ts';

/** The table of contents: every page and every change, by address. Handlers live in the folder of their area. */
export const PAGES: readonly Route[] = [
  // Today
  get('/', today.today),

  // Shop
  get('/shop', shop.choose),
  postBare('/shop', shop.open),
  getTrusted('/shop/anew', shop.askAnew),
  postBare('/shop/anew', shop.anew),

  // Search
  get('/search', search.search),

  // Machines under restoration
  get('/machines', machines.list),
  getTrusted('/machines/new', machines.askNew),
  post('/machines', machines.add),
  get('/machines/:id', machines.one),
  getTrusted('/machines/:id/edit', machines.askEdit),
  post('/machines/:id', machines.save),
  post('/machines/:id/close', machines.close),
  post('/machines/:id/reopen', machines.reopen),
  getTrusted('/machines/:id/assemblies/new', assemblies.askNew),
  post('/machines/:id/assemblies', assemblies.add),
  getTrusted('/assemblies/:id/edit', assemblies.askEdit),
  post('/assemblies/:id', assemblies.save),

  // Change-gear sets
  getTrusted('/machines/:id/sets/new', setEdits.askNew),
  post('/machines/:id/sets', setEdits.add),
  get('/sets/:id', sets.one),
  getTrusted('/sets/:id/edit', setEdits.askEdit),
  post('/sets/:id', setEdits.save),
  getTrusted('/sets/:id/wheels', setEdits.askWheels),
  post('/sets/:id/wheels', setEdits.saveWheels),
  post('/sets/:id/open', sets.open),

  // Parts
  getTrusted('/machines/:id/parts/new', partEdits.askNew),
  post('/machines/:id/parts', partEdits.add),
  get('/parts/:id', parts.one),
  getTrusted('/parts/:id/edit', partEdits.askEdit),
  post('/parts/:id', partEdits.save),
  post('/parts/:id/way', parts.keepWay),
  post('/parts/:id/promise', parts.promiseBlank),
  post('/parts/:id/fit', parts.fit),
  post('/parts/:id/take-out', parts.takeItOut),
  getTrusted('/parts/:id/remove', parts.askRemove),
  post('/parts/:id/remove', parts.remove),

  // Sheets on paper, and the count at the mill
  get('/parts/:id/sheet', sheets.partSheet),
  get('/operations/:id/index-sheet', sheets.indexSheet),
  get('/set-ups/sheet', sheets.setUpSheet),
  get('/operations/:id/teeth', sheets.teeth),
  post('/operations/:id/teeth/cut', sheets.toothCut),
  post('/operations/:id/teeth/back', sheets.toothBack),

  // Routings, operations, made records
  get('/routings/:id', routings.one),
  post('/routings/:id/accept', acts.accept),
  post('/routings/:id/leave', acts.leave),
  getTrusted('/routings/:id/operations/new', edits.askNew),
  post('/routings/:id/operations', edits.add),
  getTrusted('/routings/:id/give-up', routings.askGiveUp),
  post('/routings/:id/give-up', routings.giveUp),
  getTrusted('/routings/:id/finish', finish.askFinish),
  post('/routings/:id/finish', finish.finish),
  get('/operations/:id', routings.operation),
  get('/operations/:id/at-machine', routings.machineSide),
  post('/operations/:id/measured', measured.measured),
  post('/operations/:id/done', measured.done),
  post('/operations/:id/undone', acts.undone),
  post('/operations/:id/strike', acts.strike),
  post('/operations/:id/restore', acts.restore),
  post('/operations/:id/move', acts.move),
  getTrusted('/operations/:id/edit', edits.askEdit),
  post('/operations/:id/edit', edits.edit),
  getTrusted('/operations/:id/hold', hold.askHold),
  post('/operations/:id/hold', hold.hold),
  getTrusted('/operations/:id/figures/:key', edits.askFigure),
  post('/operations/:id/figures/:key', edits.figure),
  post('/operations/:id/figures/:key/back', edits.figureBack),
  get('/set-ups', routings.setUps),
  get('/made', made.list),
  get('/made/:id', made.record),
  getTrusted('/made/:id/again', madeAgain.askAgain),
  post('/made/:id/again', madeAgain.again),

  // Sums
  get('/sums', sums.contents),
  get('/sums/:path', sums.oneSum),

  // Devices
  get('/devices', devices.list),
  postBare('/devices/code', devices.makeCode),
  getTrusted('/devices/code/:code', devices.code),
  postBare('/devices/:id/revoke', devices.revoke),
  get('/pair/:code', devices.askPair),
  postByAnyone('/pair/:code', devices.doPair),

  // Drawer
  get('/drawer', drawer.list),
  getTrusted('/drawer/quick', drawer.askQuick),
  post('/drawer/quick', drawer.addQuick),
  getTrusted('/drawer/new/:kind', drawer.ask),
  post('/drawer/new/:kind', drawer.add),
  get('/drawer/:id', things.one),
  getTrusted('/drawer/:id/edit', things.edit),
  post('/drawer/:id/edit', things.save),
  post('/drawer/:id/readings', things.addOne),
  post('/drawer/:id/walls', things.addWalls),
  getTrusted('/drawer/:id/readings/:reading/strike', things.askStrike),
  post('/drawer/:id/readings/:reading/strike', things.strike),
  post('/drawer/:id/gone', things.gone),
  post('/drawer/:id/back', things.comeBack),

  // Settings
  get('/settings', settings.defaults),
  post('/settings', settings.save),

  // Shop machines
  get('/tools/machines', shopMachines.list),
  getTrusted('/tools/machines/new', shopMachines.ask),
  post('/tools/machines/new', shopMachines.add),
  get('/tools/machines/:id', shopMachines.one),
  getTrusted('/tools/machines/:id/edit', shopMachines.edit),
  post('/tools/machines/:id/edit', shopMachines.save),
  post('/tools/machines/:id/usual', shopMachines.makeUsual),
  post('/tools/machines/:id/retire', shopMachines.retire),
  post('/tools/machines/:id/put-back', shopMachines.putBack),

  // Tools
  get('/tools', tools.list),
  getTrusted('/tools/new/:kind', tools.ask),
  post('/tools/new/:kind', tools.add),
  get('/tools/:id', tools.one),
  getTrusted('/tools/:id/edit', tools.edit),
  post('/tools/:id/edit', tools.save),
  post('/tools/:id/lend', tools.lend),
  post('/tools/:id/back', tools.comeBack),
  post('/tools/:id/wear', tools.wear),
  post('/tools/:id/retire', tools.retire),
  post('/tools/:id/put-back', tools.putBack),
];
