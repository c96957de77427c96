import { room } from './room.ts';
import { get, getTrusted, post, postBare, postByAnyone, type Route } from './visit.ts';

const devices = room(() => import('./devices/routes.ts'));
const things = room(() => import('./drawer/item-routes.ts'));
const thingAnswers = room(() => import('./drawer/identified-routes.ts'));
const drawer = room(() => import('./drawer/routes.ts'));
const assemblies = room(() => import('./machines/assembly-routes.ts'));
const machines = room(() => import('./machines/routes.ts'));
const madeAgain = room(() => import('./made/again-routes.ts'));
const finish = room(() => import('./made/finish-routes.ts'));
const made = room(() => import('./made/routes.ts'));
const partEdits = room(() => import('./parts/edit-routes.ts'));
const partAnswers = room(() => import('./parts/identified-routes.ts'));
const partReadings = room(() => import('./parts/reading-routes.ts'));
const parts = room(() => import('./parts/routes.ts'));
const acts = room(() => import('./routings/acts-routes.ts'));
const routingDone = room(() => import('./routings/done-routes.ts'));
const edits = room(() => import('./routings/edit-routes.ts'));
const hold = room(() => import('./routings/hold-routes.ts'));
const measured = room(() => import('./routings/measured-routes.ts'));
const routings = room(() => import('./routings/routes.ts'));
const search = room(() => import('./search/routes.ts'));
const setEdits = room(() => import('./sets/edit-routes.ts'));
const sets = room(() => import('./sets/routes.ts'));
const settings = room(() => import('./settings/routes.ts'));
const sheets = room(() => import('./sheets/routes.ts'));
const shop = room(() => import('./shop/routes.ts'));
const shopMachines = room(() => import('./shop-machines/routes.ts'));
const measuringSheets = room(() => import('./sums/measuring-sheet-routes.ts'));
const sums = room(() => import('./sums/routes.ts'));
const today = room(() => import('./today/routes.ts'));
const tools = room(() => import('./tools/routes.ts'));

/** The table of contents: every page and every change, by address. Handlers live in the folder of their area. */
export const PAGES: readonly Route[] = [
  // Today
  get('/', today.to('today')),

  // Shop
  get('/shop', shop.to('choose')),
  postBare('/shop', shop.to('open')),
  getTrusted('/shop/anew', shop.to('askAnew')),
  postBare('/shop/anew', shop.to('anew')),

  // Search
  get('/search', search.to('search')),

  // Machines under restoration
  get('/machines', machines.to('list')),
  getTrusted('/machines/new', machines.to('askNew')),
  post('/machines', machines.to('add')),
  get('/machines/:id', machines.to('one')),
  getTrusted('/machines/:id/edit', machines.to('askEdit')),
  post('/machines/:id', machines.to('save')),
  post('/machines/:id/close', machines.to('close')),
  post('/machines/:id/reopen', machines.to('reopen')),
  getTrusted('/machines/:id/assemblies/new', assemblies.to('askNew')),
  post('/machines/:id/assemblies', assemblies.to('add')),
  getTrusted('/assemblies/:id/edit', assemblies.to('askEdit')),
  post('/assemblies/:id', assemblies.to('save')),

  // Change-gear sets
  getTrusted('/machines/:id/sets/new', setEdits.to('askNew')),
  post('/machines/:id/sets', setEdits.to('add')),
  get('/sets/:id', sets.to('one')),
  getTrusted('/sets/:id/edit', setEdits.to('askEdit')),
  post('/sets/:id', setEdits.to('save')),
  getTrusted('/sets/:id/wheels', setEdits.to('askWheels')),
  post('/sets/:id/wheels', setEdits.to('saveWheels')),
  post('/sets/:id/open', sets.to('open')),

  // Parts
  getTrusted('/machines/:id/parts/new', partEdits.to('askNew')),
  post('/machines/:id/parts', partEdits.to('add')),
  get('/parts/:id', parts.to('one')),
  getTrusted('/parts/:id/edit', partEdits.to('askEdit')),
  post('/parts/:id', partEdits.to('save')),
  post('/parts/:id/identified', partAnswers.to('identified')),
  post('/parts/:id/readings', partReadings.to('addOne')),
  getTrusted('/parts/:id/readings/:reading/strike', partReadings.to('askStrike')),
  post('/parts/:id/readings/:reading/strike', partReadings.to('strike')),
  get('/parts/:id/measuring-sheet', measuringSheets.to('ofPart')),
  post('/parts/:id/way', parts.to('keepWay')),
  post('/parts/:id/promise', parts.to('promiseBlank')),
  post('/parts/:id/fit', parts.to('fit')),
  post('/parts/:id/take-out', parts.to('takeItOut')),
  getTrusted('/parts/:id/remove', parts.to('askRemove')),
  post('/parts/:id/remove', parts.to('remove')),

  // Sheets on paper, and the count at the mill
  get('/parts/:id/sheet', sheets.to('partSheet')),
  get('/operations/:id/index-sheet', sheets.to('indexSheet')),
  get('/set-ups/sheet', sheets.to('setUpSheet')),
  get('/operations/:id/teeth', sheets.to('teeth')),
  post('/operations/:id/teeth/cut', sheets.to('toothCut')),
  post('/operations/:id/teeth/back', sheets.to('toothBack')),

  // Routings, operations, made records
  get('/routings/:id', routings.to('one')),
  post('/routings/:id/accept', acts.to('accept')),
  post('/routings/:id/leave', acts.to('leave')),
  getTrusted('/routings/:id/operations/new', edits.to('askNew')),
  post('/routings/:id/operations', edits.to('add')),
  getTrusted('/routings/:id/give-up', routings.to('askGiveUp')),
  post('/routings/:id/give-up', routings.to('giveUp')),
  getTrusted('/routings/:id/finish', finish.to('askFinish')),
  post('/routings/:id/finish', finish.to('finish')),
  get('/operations/:id', routings.to('operation')),
  get('/operations/:id/at-machine', routings.to('machineSide')),
  post('/operations/:id/measured', measured.to('measured')),
  post('/operations/:id/done', routingDone.to('done')),
  post('/operations/:id/undone', acts.to('undone')),
  post('/operations/:id/strike', acts.to('strike')),
  post('/operations/:id/restore', acts.to('restore')),
  post('/operations/:id/move', acts.to('move')),
  getTrusted('/operations/:id/edit', edits.to('askEdit')),
  post('/operations/:id/edit', edits.to('edit')),
  getTrusted('/operations/:id/hold', hold.to('askHold')),
  post('/operations/:id/hold', hold.to('hold')),
  getTrusted('/operations/:id/figures/:key', edits.to('askFigure')),
  post('/operations/:id/figures/:key', edits.to('figure')),
  post('/operations/:id/figures/:key/back', edits.to('figureBack')),
  get('/set-ups', routings.to('setUps')),
  get('/made', made.to('list')),
  get('/made/:id', made.to('record')),
  getTrusted('/made/:id/again', madeAgain.to('askAgain')),
  post('/made/:id/again', madeAgain.to('again')),

  // Sums
  get('/sums', sums.to('contents')),
  get('/sums/unknown-gear/measuring-sheet', measuringSheets.to('blank')),
  get('/sums/:path', sums.to('oneSum')),

  // Devices
  get('/devices', devices.to('list')),
  postBare('/devices/code', devices.to('makeCode')),
  getTrusted('/devices/code/:code', devices.to('code')),
  postBare('/devices/:id/revoke', devices.to('revoke')),
  get('/pair/:code', devices.to('askPair')),
  postByAnyone('/pair/:code', devices.to('doPair')),

  // Drawer
  get('/drawer', drawer.to('list')),
  getTrusted('/drawer/quick', drawer.to('askQuick')),
  post('/drawer/quick', drawer.to('addQuick')),
  getTrusted('/drawer/new/:kind', drawer.to('ask')),
  post('/drawer/new/:kind', drawer.to('add')),
  get('/drawer/:id', things.to('one')),
  getTrusted('/drawer/:id/edit', things.to('edit')),
  post('/drawer/:id/edit', things.to('save')),
  post('/drawer/:id/identified', thingAnswers.to('identified')),
  get('/drawer/:id/measuring-sheet', measuringSheets.to('ofItem')),
  post('/drawer/:id/readings', things.to('addOne')),
  post('/drawer/:id/walls', things.to('addWalls')),
  getTrusted('/drawer/:id/readings/:reading/strike', things.to('askStrike')),
  post('/drawer/:id/readings/:reading/strike', things.to('strike')),
  post('/drawer/:id/gone', things.to('gone')),
  post('/drawer/:id/back', things.to('comeBack')),

  // Settings
  get('/settings', settings.to('defaults')),
  post('/settings', settings.to('save')),

  // Shop machines
  get('/tools/machines', shopMachines.to('list')),
  getTrusted('/tools/machines/new', shopMachines.to('ask')),
  post('/tools/machines/new', shopMachines.to('add')),
  get('/tools/machines/:id', shopMachines.to('one')),
  getTrusted('/tools/machines/:id/edit', shopMachines.to('edit')),
  post('/tools/machines/:id/edit', shopMachines.to('save')),
  post('/tools/machines/:id/usual', shopMachines.to('makeUsual')),
  post('/tools/machines/:id/retire', shopMachines.to('retire')),
  post('/tools/machines/:id/put-back', shopMachines.to('putBack')),

  // Tools
  get('/tools', tools.to('list')),
  getTrusted('/tools/new/:kind', tools.to('ask')),
  post('/tools/new/:kind', tools.to('add')),
  get('/tools/:id', tools.to('one')),
  getTrusted('/tools/:id/edit', tools.to('edit')),
  post('/tools/:id/edit', tools.to('save')),
  post('/tools/:id/lend', tools.to('lend')),
  post('/tools/:id/back', tools.to('comeBack')),
  post('/tools/:id/wear', tools.to('wear')),
  post('/tools/:id/retire', tools.to('retire')),
  post('/tools/:id/put-back', tools.to('putBack')),
];

const ROOMS = [
  devices,
  things,
  thingAnswers,
  drawer,
  assemblies,
  machines,
  madeAgain,
  finish,
  made,
  partEdits,
  partAnswers,
  partReadings,
  parts,
  acts,
  routingDone,
  edits,
  hold,
  measured,
  routings,
  search,
  setEdits,
  sets,
  settings,
  sheets,
  shop,
  shopMachines,
  measuringSheets,
  sums,
  today,
  tools,
];

/** Reads in every room, one after another; then the slowest sum is asked a few times by ourselves, so that its first asker does not wait. */
export async function readAllRooms(): Promise<void> {
  for (const one of ROOMS) await one.read();
  const { warmIdentify } = await import('./sums/identify-warmed.ts');
  await warmIdentify();
}
