import type { Generated } from 'kysely';

/** What was made, for good. sheet: a photograph, as JSON, of what was printed and measured; later edits never touch it. */
export interface MadeTable {
  id: Generated<number>;
  part_id: number;
  routing_id: number;
  outcome: 'good' | 'scrap';
  finished_on: string;
  minutes: number;
  cost_cents: number;
  notes: string;
  sheet: string;
}

/** Full text of what can be looked for. rowid rises, so the newest comes first by rowid. */
export interface FoundTable {
  rowid: Generated<number>;
  kind: string;
  ref: number;
  title: string;
  text: string;
  notes: string;
}

/** Which row of `found` stands for a thing, so that a change replaces it. */
export interface FoundPlaceTable {
  kind: string;
  ref: number;
  found_rowid: number;
}

export interface DeviceTable {
  id: Generated<number>;
  token_sha256: string;
  name: string;
  paired_on: string;
  seen_on: string;
  revoked_on: string | null;
}

export interface PairingCodeTable {
  code_sha256: string;
  made_at: string;
  good_until: string;
  used_at: string | null;
}

/** The one-time mark of a form that has been acted on, and the address that it was answered with. */
export interface SentTable {
  mark: string;
  answered_with: string;
  at: string;
}

/** The owner's own defaults: clean-up, where a numbered cutter is exact, unit of the work. value: text or JSON. */
export interface SettingTable {
  key: string;
  value: string;
  rev: Generated<number>;
}
