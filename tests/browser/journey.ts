import { randomUUID } from 'node:crypto';
import os from 'node:os';
import path from 'node:path';
import type { Page } from 'playwright';
import sharp from 'sharp';
import { expect } from 'vitest';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import { wedge } from '@/tests/support/browser';
import { renderCode } from '@/tests/support/fake-camera/render-code';

/** The four ways a code gets in. */
export type WayIn = 'camera' | 'wedge' | 'typed' | 'photo';

export const TODAY = dateIn('America/New_York', new Date());
export const inDays = (days: number): CalendarDate => addDays(TODAY, days);

const yymmdd = (date: CalendarDate) => date.slice(2).replaceAll('-', '');

/** What is printed on the jugs of the journey: product, lot, best before in two hundred days. */
export const LABEL = `(01)09521234543213(15)${yymmdd(inDays(200))}(10)K26-114`;
/** The same as a scanner sends it. */
const AS_SCANNED = `]d2010952123454321315${yymmdd(inDays(200))}10K26-114`;

/** A picture file of a code on white, as somebody would photograph it. */
export async function pictureOf(kind: 'gs1datamatrix' | 'datamatrix', text: string): Promise<string> {
  const { width, height, data } = await renderCode(kind, text);
  const file = path.join(os.tmpdir(), `flitchbook-${randomUUID()}.png`);
  const raw = { width, height, channels: 4 } as const;
  await sharp(Buffer.from(data), { raw })
    .extend({ top: 60, bottom: 60, left: 60, right: 60, background: '#fff' })
    .png()
    .toFile(file);
  return file;
}

/** Gives the page a code by one of the ways; the camera sees what it was started with. */
export async function give(
  page: Page,
  way: WayIn,
  code: { typed: string; scanned: string; picture: string },
): Promise<void> {
  if (way === 'camera') {
    const open = page.getByRole('button', { name: 'Open camera' });
    // It opens by itself once it was allowed on this device.
    if (await open.isVisible().catch(() => false)) await open.click({ timeout: 2000 }).catch(() => undefined);
    return;
  }
  if (way === 'wedge') {
    // What comes in while a page is still waking is refused as half a code.
    await page.waitForTimeout(1000);
    return wedge(page, code.scanned);
  }
  if (way === 'photo') return page.locator('input[type=file]').first().setInputFiles(code.picture);
  await page.getByRole('button', { name: 'Type it' }).click();
  await page.getByLabel(/The code, as printed/).fill(code.typed);
  await page.getByRole('button', { name: 'Look it up' }).click();
}

/** The label of the jugs in every form. */
export async function jugCode() {
  return { typed: LABEL, scanned: AS_SCANNED, picture: await pictureOf('gs1datamatrix', LABEL) };
}

/** One of our own labels in every form. */
export async function ownCode(label: string) {
  const text = label.replaceAll('-', '');
  return { typed: label.toLowerCase(), scanned: text, picture: await pictureOf('datamatrix', text) };
}

/** Begins an empty book. */
export async function beginBook(page: Page): Promise<void> {
  await page.goto('/');
  await page.getByRole('link', { name: /empty book/i }).click();
  await page.getByLabel('The workshop’s name').fill('Heron Yard');
  await page.getByText('Metric', { exact: true }).click();
  await page.getByRole('button', { name: /Begin/ }).click();
  await page.waitForURL('**/arrive');
}

/** Adds a client job through the form. */
export async function addClientJob(page: Page, name: string, day: CalendarDate): Promise<void> {
  await page.goto('/jobs/new');
  await page.getByLabel('Name').fill(name);
  await page.getByText('A client’s', { exact: true }).click();
  await page.getByLabel('Client', { exact: false }).last().fill('Marlow');
  await page.getByLabel('Day of use').fill(day);
  await page.getByRole('button', { name: `Add ${name}` }).click();
  await page.waitForURL(/\/jobs(\/\d+)?$/);
}

/** What the page says is left of a container: "2.1 kg of 2.5 kg". */
export async function expectLeft(page: Page, label: string, left: RegExp): Promise<void> {
  await page.goto(`/containers/${label}`);
  await expect.poll(() => page.locator('main').innerText()).toMatch(left);
}
