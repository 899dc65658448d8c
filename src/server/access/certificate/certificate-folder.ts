import { chmod, mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { CertifiedKey } from './make-certificates.js';

/** Whose certificate: the local authority's, or the server's own. */
export type Holder = 'authority' | 'server';

/** Reads certificate and key of a folder; undefined where one of them is not there. */
export async function readCertified(folder: string, holder: Holder): Promise<CertifiedKey | undefined> {
  const { certificate, key } = certificatePaths(folder, holder);
  try {
    return { certificate: await readFile(certificate, 'utf8'), key: await readFile(key, 'utf8') };
  } catch (fault) {
    if ((fault as NodeJS.ErrnoException).code === 'ENOENT') return undefined;
    throw fault;
  }
}

/** Writes both, readable by the owner of the files alone; each file is replaced whole or not at all. */
export async function writeCertified(folder: string, holder: Holder, pair: CertifiedKey): Promise<void> {
  await mkdir(folder, { recursive: true, mode: 0o700 });
  const paths = certificatePaths(folder, holder);
  await writePrivately(paths.key, pair.key);
  await writePrivately(paths.certificate, pair.certificate);
}

export const certificatePaths = (folder: string, holder: Holder) => ({
  certificate: join(folder, `${holder}.crt`),
  key: join(folder, `${holder}.key`),
});

async function writePrivately(path: string, text: string): Promise<void> {
  const fresh = `${path}.new`;
  await writeFile(fresh, text, { mode: 0o600 });
  // The mode above holds only where the file is new.
  await chmod(fresh, 0o600);
  await rename(fresh, path);
}
