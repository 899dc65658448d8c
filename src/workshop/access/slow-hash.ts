import { randomBytes, type ScryptOptions, scrypt, timingSafeEqual } from 'node:crypto';

/** How hard scrypt works (RFC 7914): memory is 128·N·r bytes, time grows with N·r·p. */
export interface ScryptCost {
  readonly N: number;
  readonly r: number;
  readonly p: number;
}

/** 32 MiB and about 0.3 s on a small computer: a guess costs as much, a sign-in does not hurt. */
export const USUAL_COST: ScryptCost = { N: 32_768, r: 8, p: 3 };

/** Hashes of what people choose: passwords and PINs. */
export interface SlowHash {
  /** Cost, salt and hash in one text, another one each time. */
  readonly hash: (secret: string) => Promise<string>;
  /** Whether it is the secret of that hash, and whether the hash was made at another cost than is usual now. Without a
   * hash it takes the same time and says no, so that nobody learns who exists. */
  readonly matches: (secret: string, kept: string | undefined) => Promise<Match>;
}

export interface Match {
  readonly matches: boolean;
  readonly outdated: boolean;
}

/** scrypt with its cost kept beside every hash, `scrypt$N,r,p$SALT$HASH`, so that it can be raised later. */
export function slowHash(cost: ScryptCost = USUAL_COST): SlowHash {
  return {
    hash: async (secret) => {
      const salt = randomBytes(SALT_BYTES);
      const made = await derive(secret, salt, cost);
      return ['scrypt', costText(cost), salt.toString('base64url'), made.toString('base64url')].join('$');
    },
    matches: async (secret, kept) => {
      const read = kept === undefined ? undefined : readHash(kept);
      if (!read) {
        await derive(secret, Buffer.alloc(SALT_BYTES), cost);
        return { matches: false, outdated: false };
      }
      const made = await derive(secret, read.salt, read.cost);
      const matches = made.length === read.hash.length && timingSafeEqual(made, read.hash);
      return { matches, outdated: costText(read.cost) !== costText(cost) };
    },
  };
}

const SALT_BYTES = 16;
const HASH_BYTES = 32;
/** A hash from a foreign file shall not make the server take more than 1 GiB. */
const MOST_MEMORY = 2 ** 30;

function readHash(text: string) {
  const [, N, r, p, salt = '', hash = ''] =
    /^scrypt\$(\d+),(\d+),(\d+)\$([\w-]{22})\$([\w-]{43})$/.exec(text) ?? [];
  const cost = { N: Number(N), r: Number(r), p: Number(p) };
  if (hash === '' || memoryOf(cost) > MOST_MEMORY) return undefined;
  return { cost, salt: Buffer.from(salt, 'base64url'), hash: Buffer.from(hash, 'base64url') };
}

/** The same letters typed on different keyboards can be different code points: NFKC makes them one. */
function derive(secret: string, salt: Buffer, cost: ScryptCost): Promise<Buffer> {
  const options: ScryptOptions = { ...cost, maxmem: memoryOf(cost) };
  return new Promise((resolve, reject) => {
    scrypt(secret.normalize('NFKC'), salt, HASH_BYTES, options, (fault, made) => {
      if (fault) reject(fault);
      else resolve(made);
    });
  });
}

/** Node refuses to work without room to spare: its own usual limit of 32 MiB is too little for 32 MiB. */
const memoryOf = ({ N, r, p }: ScryptCost): number => 128 * r * (N + p + 2) + 2 ** 20;

const costText = ({ N, r, p }: ScryptCost): string => `${N},${r},${p}`;
