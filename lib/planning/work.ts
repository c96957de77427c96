/** What an operation needs, in words, and the tool that meets it; null while none does. */
type WorkNeed = { readonly says: string; readonly metBy: string | null };

/** An operation of any open routing, as planning looks at it. after: ids of those that come first. blankFails: why its blank will not do. */
export type WorkOperation = {
  readonly id: number;
  readonly partName: string;
  readonly title: string;
  readonly done: boolean;
  readonly struck: boolean;
  readonly after: readonly number[];
  readonly heldFor?: number | null;
  readonly blankFails?: string;
  readonly needs: readonly WorkNeed[];
};

/** One thing that is waited for. A tool may be lacked by an operation before this one: at says which. */
export type WaitsFor =
  | { readonly for: 'tool'; readonly says: string; readonly at: number }
  | { readonly for: 'blank'; readonly says: string }
  | { readonly for: 'operation'; readonly says: string; readonly id: number };

/** waits: first of all what comes first. says: the state in one sentence. */
export type OperationState = {
  readonly id: number;
  readonly state: 'done' | 'struck out' | 'ready' | 'waits' | 'held';
  readonly waits: readonly WaitsFor[];
  readonly heldFor: number | null;
  readonly says: string;
};
