import { existsSync } from 'node:fs';

/** The folder that holds `package.json`, whether this runs from source or from the compiled copy in `dist`. */
export function packageRoot(): URL {
  let folder = new URL('./', import.meta.url);
  while (!existsSync(new URL('package.json', folder))) {
    const above = new URL('../', folder);
    if (above.href === folder.href)
      throw new Error('No package.json above the program: it was taken out of its package');
    folder = above;
  }
  return folder;
}
