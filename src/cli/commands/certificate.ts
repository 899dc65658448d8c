import { writeFile } from 'node:fs/promises';
import type { Command } from 'commander';
import { workshopFaultWords } from '../../contract/index.js';
import type { Result } from '../../core/foundation/index.js';
import type { KeptCertificate } from '../../server/index.js';
import type { WorkshopFault } from '../../workshop/index.js';
import { Refusal, readInput } from '../inputs.js';
import { wholeOption } from '../options.js';
import type { Terminal } from '../terminal.js';

const FOLDER = 'where certificate and key lie, or shall lie';
const USUAL_PORT = '4870';

/** `tautwork certificate`: what a server needs to speak https on the shop's network. */
export function certificateCommand(program: Command, terminal: Terminal): void {
  const certificate = program
    .command('certificate')
    .summary("make, renew or take the certificate for the shop's network")
    .description(
      "Browsers let a tablet work without network, and use its microphone, only over https. This makes a local authority for the shop and the server's certificate, or takes a certificate from files.",
    );
  makeCommand(certificate, terminal);
  renewCommand(certificate, terminal);
  useCommand(certificate, terminal);
  showCommand(certificate, terminal);
}

interface ShowOptions {
  readonly folder: string;
  readonly port: string;
  readonly qr?: string;
}

function makeCommand(certificate: Command, terminal: Terminal): void {
  withShowOptions(certificate.command('make'))
    .summary("make a local authority and the server's certificate")
    .description(
      "Makes the shop's own authority, once, and a server's certificate for all names and addresses by which the server is reached. The authority can vouch for private networks and these names only.",
    )
    .argument('<hosts...>', 'names and addresses: shop.local 192.168.1.20')
    .action(async (hosts: readonly string[], options: ShowOptions) => {
      const { makeCertificate } = await import('../../server/index.js');
      const names = hosts.map((host) => hostOf(host));
      await show(terminal, options, await makeCertificate(options.folder, names, new Date()));
    });
}

function renewCommand(certificate: Command, terminal: Terminal): void {
  withShowOptions(certificate.command('renew'))
    .summary("make the server's certificate anew, by the same authority")
    .description('Devices that trust the authority need nothing new. Start the server again afterwards.')
    .action(async (options: ShowOptions) => {
      const { renewCertificate } = await import('../../server/index.js');
      await show(terminal, options, await renewCertificate(options.folder, new Date()));
    });
}

function useCommand(certificate: Command, terminal: Terminal): void {
  withShowOptions(certificate.command('use'))
    .summary('take a certificate that was made elsewhere')
    .description('Copies certificate and key, after a look at whether they belong together and are good now.')
    .requiredOption('--certificate <file>', 'PEM; the whole chain, the server first')
    .requiredOption('--key <file>', 'PEM, without a password')
    .action(async (options: ShowOptions & { readonly certificate: string; readonly key: string }) => {
      const { takeCertificate } = await import('../../server/index.js');
      const pair = { certificate: await textOf(options.certificate), key: await textOf(options.key) };
      await show(terminal, options, await takeCertificate(options.folder, pair, new Date()));
    });
}

function showCommand(certificate: Command, terminal: Terminal): void {
  withShowOptions(certificate.command('show'))
    .summary('show what lies there, and the QR code for tablets')
    .action(async (options: ShowOptions) => {
      const { keptCertificate } = await import('../../server/index.js');
      await show(terminal, options, await keptCertificate(options.folder, new Date()));
    });
}

const withShowOptions = (command: Command): Command =>
  command
    .requiredOption('--folder <folder>', FOLDER)
    .option(
      '--port <number>',
      'port of the server, for the address that tablets fetch the authority from',
      USUAL_PORT,
    )
    .option('--qr <file>', 'write the QR code of that address as PNG');

/** Says what there is now, and how tablets come to trust it. */
async function show(
  terminal: Terminal,
  { folder, port: typedPort, qr }: ShowOptions,
  kept: Result<KeptCertificate, WorkshopFault>,
): Promise<void> {
  if (!kept.ok) throw refusalOf(kept.fault);
  const port = wholeOption('--port', typedPort, { least: 1, most: 65_535 });
  const { server, authority } = kept.value;
  const { AUTHORITY_ADDRESS, isDueForRenewal, qrInBlocks, qrPicture } = await import('../../server/index.js');
  terminal.print(
    `Certificate for ${server.hosts.join(', ')}, good until ${dayOf(server.notAfter)}, in ${folder}.`,
  );
  if (isDueForRenewal(server, new Date())) terminal.print('It should be renewed now.');
  const [host] = server.hosts;
  if (!authority || host === undefined) return;
  const address = `https://${host.includes(':') ? `[${host}]` : host}:${port}${AUTHORITY_ADDRESS}`;
  terminal.print(
    [
      '',
      'Each tablet must trust the authority of the shop, once. When the server runs, open this address on the tablet,',
      'go on past the warning, and install the file as a certificate authority:',
      '',
      `  ${address}`,
      '',
      qrInBlocks(address),
      '',
      'Install it only where the tablet shows this fingerprint (SHA-256):',
      '',
      `  ${authority.fingerprint}`,
      '',
      `The authority is good until ${dayOf(authority.notAfter)}. Keep authority.key where nobody else can read it.`,
    ].join('\n'),
  );
  if (qr !== undefined) await writeFile(qr, await qrPicture(address));
}

function hostOf(typed: string): string {
  const host = typed.toLowerCase().replace(/^\[(.*)\]$/, '$1');
  const isName = /^[a-z0-9]([a-z0-9-]*[a-z0-9])?(\.[a-z0-9]([a-z0-9-]*[a-z0-9])?)*$/.test(host);
  if (isName || isAddress(host)) return host;
  throw new Refusal(
    `"${typed}" is no name or address of a computer. Write such as shop.local or 192.168.1.20.`,
  );
}

const isAddress = (host: string): boolean => /^[0-9a-f:.]+$/.test(host) && URL.canParse(`http://[${host}]`);

async function textOf(path: string): Promise<string> {
  return new TextDecoder().decode(await readInput(path));
}

function refusalOf(fault: WorkshopFault): Refusal {
  const { what, mend } = workshopFaultWords(fault);
  return new Refusal(`${what} ${mend}`);
}

const dayOf = (date: Date): string => date.toISOString().slice(0, 10);
