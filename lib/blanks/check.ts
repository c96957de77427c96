/** What was looked at on a spare. */
export type CheckName = 'outside' | 'metal' | 'hardness' | 'bore' | 'face' | 'wall' | 'material';
/** 'measure first' is never a yes. */
export type CheckResult = 'yes' | 'beware' | 'measure first' | 'no';
export type Check = { readonly about: CheckName; readonly result: CheckResult; readonly says: string };

export const check = (about: CheckName, result: CheckResult, says: string): Check => ({ about, result, says });
