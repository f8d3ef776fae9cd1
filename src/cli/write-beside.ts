import {
  closeSync,
  fsyncSync,
  openSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';

/** What of the system is needed; tests put faults into it. */
export const SYSTEM = {
  closeSync,
  fsyncSync,
  openSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
};

export type System = typeof SYSTEM;

/** The file itself where a name only points at one; the name where there is none yet. */
function fileOf(out: string, { realpathSync }: System): string {
  try {
    return realpathSync(out);
  } catch {
    return out;
  }
}

/** Whether a name is taken by something that is no file, such as a device, which is written to as it is. */
function isNoFile(file: string, { statSync }: System): boolean {
  const about = statSync(file, { throwIfNoEntry: false });
  return about !== undefined && !about.isFile();
}

/**
 * Writes a file whole or not at all: beside it first, then in its place, so that a full disk or a stopped run leaves
 * what was there. Throws what the system says.
 */
export function writeBeside(out: string, content: string | Uint8Array, system: System = SYSTEM): void {
  const file = fileOf(out, system);
  if (isNoFile(file, system)) {
    system.writeFileSync(file, content);
    return;
  }
  const beside = join(dirname(file), `.${basename(file)}.${process.pid}.part`);
  try {
    const at = system.openSync(beside, 'w');
    try {
      system.writeFileSync(at, content);
      system.fsyncSync(at);
    } finally {
      system.closeSync(at);
    }
    system.renameSync(beside, file);
  } catch (error) {
    system.rmSync(beside, { force: true });
    throw error;
  }
}
