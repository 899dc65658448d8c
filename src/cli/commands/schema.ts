import type { Command } from 'commander';
import { DaySchema, ShopSchema } from '../../contract/index.js';
import { Refusal } from '../inputs.js';
import type { Terminal } from '../terminal.js';

const SCHEMAS: Readonly<Record<string, object>> = { day: DaySchema, shop: ShopSchema };

/** `tautwork schema`: the published JSON Schemas of what we read and write. */
export function schemaCommand(program: Command, terminal: Terminal): void {
  program
    .command('schema')
    .summary('print the JSON Schema of a file')
    .description(
      'Prints the JSON Schema (draft 2020-12 words) of the shop file that --shop reads, or of the day that --json prints.',
    )
    .argument('<name>', 'day or shop')
    .action((name: string) => {
      const schema = SCHEMAS[name];
      if (!schema) throw new Refusal(`There is no schema "${name}": write day or shop.`);
      terminal.print(
        JSON.stringify({ $schema: 'https://json-schema.org/draft/2020-12/schema', ...schema }, null, 2),
      );
    });
}
