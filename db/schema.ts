import type { AssemblyTable, PartTable, ProjectTable, WheelSetTable } from './tables/machines.ts';
import type { DeviceTable, FoundPlaceTable, FoundTable, MadeTable, PairingCodeTable, SentTable, SettingTable } from './tables/records.ts';
import type {
  BlankTable,
  BookmarkTable,
  FigureTable,
  FollowsTable,
  NeedTable,
  OperationTable,
  RoutingTable,
  SetUpTable,
  TickTable,
} from './tables/routings.ts';
import type {
  ArborTable,
  ChuckTable,
  CutterTable,
  HeadTable,
  MachineFeedTable,
  MachineSpeedTable,
  MachineTable,
  MandrelTable,
  PlateCircleTable,
  ToolTable,
} from './tables/tooling.ts';
import type { BoreTable, GearTable, ItemTable, OpeningTable, ReadingTable, RecessTable } from './tables/wheels.ts';

/** Every table of the shop's file. A test holds these types equal to the file itself. */
export interface Schema {
  project: ProjectTable;
  assembly: AssemblyTable;
  wheel_set: WheelSetTable;
  part: PartTable;
  bore: BoreTable;
  gear: GearTable;
  recess: RecessTable;
  opening: OpeningTable;
  item: ItemTable;
  reading: ReadingTable;
  tool: ToolTable;
  cutter: CutterTable;
  plate_circle: PlateCircleTable;
  head: HeadTable;
  mandrel: MandrelTable;
  arbor: ArborTable;
  chuck: ChuckTable;
  machine: MachineTable;
  machine_speed: MachineSpeedTable;
  machine_feed: MachineFeedTable;
  routing: RoutingTable;
  blank: BlankTable;
  set_up: SetUpTable;
  operation: OperationTable;
  follows: FollowsTable;
  figure: FigureTable;
  need: NeedTable;
  tick: TickTable;
  bookmark: BookmarkTable;
  made: MadeTable;
  found: FoundTable;
  found_place: FoundPlaceTable;
  device: DeviceTable;
  pairing_code: PairingCodeTable;
  sent: SentTable;
  setting: SettingTable;
}
