import type { Handler, Visit } from './visit.ts';

type HandlersOf<R> = { readonly [K in keyof R]: R[K] extends Handler ? K : never }[keyof R];

/** A room of pages. Only what the first page needs is read in before it is answered; the rest takes several times as long. */
type Room<R> = {
  readonly read: () => Promise<R>;
  /** One of the room's handlers, by the name that it has there. */
  readonly to: (name: HandlersOf<R>) => Handler;
};

/** read: the import of the room's routes, written out in the table of contents so that each can be found there. */
export function room<R>(read: () => Promise<R>): Room<R> {
  let known: R | null = null;
  const readOnce = async (): Promise<R> => {
    known ??= await read();
    return known;
  };
  return { read: readOnce, to: (name) => async (visit: Visit) => ((known ?? (await readOnce()))[name] as Handler)(visit) };
}
