import type { Page } from 'playwright-core';

/** A label under the scanner: characters and Enter, with the focus in no field. */
export async function scan(page: Page, text: string): Promise<void> {
  await page.evaluate('document.activeElement?.blur()');
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
}

/** All that was entered is with the shop. To be asked once what was entered shows on the page. */
export const allSent = (page: Page, timeout = 30_000): Promise<void> =>
  page.getByText('All that was entered here is with the shop.').waitFor({ timeout });

/** Says that the cautions were read, where this person never did at this machine. */
export async function readCautions(page: Page): Promise<void> {
  const unread = page.getByRole('button', { name: 'I have read them' });
  const known = page.getByText('you have read them at this machine');
  await unread.or(known).waitFor();
  if ((await unread.count()) > 0) await unread.click();
  await known.waitFor();
}
