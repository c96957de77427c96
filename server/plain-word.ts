import { DamagedDatabase, ForeignDatabase, MigrationFailed, NewerDatabase, ShopIsOpen } from '../db/problems.ts';
import { BadSetting, type Config } from './config.ts';

const SENTENCES = [BadSetting, DamagedDatabase, ForeignDatabase, MigrationFailed, NewerDatabase, ShopIsOpen];
const FOLDER = ['EACCES', 'EROFS', 'EPERM', 'ENOTDIR', 'EEXIST', 'ENOENT', 'EISDIR', 'SQLITE_CANTOPEN', 'SQLITE_READONLY', 'SQLITE_IOERR'];

function ofListening(code: string, { port, host }: Config): string {
  if (code === 'EADDRINUSE') return `Port ${port} is taken. Is Backgear already running? Else set BACKGEAR_PORT to another number.`;
  if (code === 'EACCES') return `Port ${port} is not open to this user. Set BACKGEAR_PORT to a number from 1024 to 65535.`;
  return `${host} is no address of this machine (${code}). Set BACKGEAR_HOST to one that is, or leave it out.`;
}

function ofFolder(code: string, { dataFolder }: Config): string | null {
  if (code === 'ENOSPC' || code === 'SQLITE_FULL') return `There is no room left for the data folder ${dataFolder}. Make room on the disk.`;
  if (code.startsWith('SQLITE_BUSY')) return `Another program holds the shop’s file in ${dataFolder}. End it, then start again.`;
  if (FOLDER.some((one) => code.startsWith(one)))
    return `The data folder ${dataFolder} cannot be written (${code}). Give this user the right to, or set BACKGEAR_DATA to another folder.`;
  return null;
}

/** What a person can do about an error at the start or by hand; null when it is our own mistake. config: null when it could not be read. */
export function plainWord(error: unknown, config: Config | null): string | null {
  if (SENTENCES.some((kind) => error instanceof kind)) return (error as Error).message;
  const { code = '', syscall = '' } = error as { code?: string; syscall?: string };
  if (!config || code === '') return null;
  return ['listen', 'bind', 'getaddrinfo'].includes(syscall) ? ofListening(code, config) : ofFolder(code, config);
}
