import type { Browser } from 'playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addMonths } from '@/shared/calendar/add-months';
import { sayDate } from '@/shared/calendar/say-date';
import {
  addClientJob,
  beginBook,
  expectLeft,
  give,
  inDays,
  jugCode,
  LABEL,
  ownCode,
  pictureOf,
  TODAY,
  type WayIn,
} from '@/tests/browser/journey';
import { expectAccessible, openBrowser, picturedOnFailure, visit } from '@/tests/support/browser';
import { fakeCameraFlags, makeFakeCamera } from '@/tests/support/fake-camera/make-fake-camera';
import { proved, type Served, serve } from '@/tests/support/serve';

const WAYS: WayIn[] = ['typed', 'wedge', 'photo', 'camera'];

describe.each(WAYS)('a jug that came in by %s', (way) => {
  let served: Served;
  let browser: Browser;
  let film = '';

  beforeAll(async () => {
    served = await serve();
    if (way === 'camera') {
      const fs = await import('node:fs');
      film = await makeFakeCamera({
        svgOrPng: fs.readFileSync(await pictureOf('gs1datamatrix', LABEL)),
        path: `${served.folder}/label.mjpeg`,
      });
    }
    browser = await openBrowser(way === 'camera' ? fakeCameraFlags(film) : []);
  });
  afterAll(async () => {
    await browser?.close();
    await served?.stop();
  });

  it('is taught once, found, opened, used, stopped on a later day, overridden, and put back by reversing', async () => {
    const { page, context, trouble } = await visit(browser, served.url, { camera: way === 'camera' });
    page.setDefaultTimeout(20_000);
    const said = () => page.locator('main').innerText();
    const press = (name: string | RegExp) => page.getByRole('button', { name }).first().click();

    await picturedOnFailure(page, `one-jug-${way}`, async () => {
      // From the empty book: a code nobody has seen is taught once.
      await beginBook(page);
      const code = await jugCode();
      await give(page, way, code);
      await page.getByText('The book has not seen this code').waitFor();
      await press('A product new to the book');
      await page.getByLabel('What it is called').fill('Deep-pour resin, part A');
      await page.getByLabel('Kind of material').selectOption('resin-a');
      await page.getByLabel('One container holds').fill('2.5 kg');
      await page.getByLabel('Resin system').fill('Tarn deep pour');
      await page
        .getByLabel(/^Opened, it keeps(?!:)/)
        .first()
        .fill('2');
      await press('Teach Deep-pour resin, part A');

      // Lot and date are read from the label; two jugs go in.
      await page.getByText('Read from the label: confirm').waitFor();
      await expect.poll(() => page.getByLabel('Lot', { exact: false }).first().inputValue()).toBe('K26-114');
      await press(/Yes, that is printed/);
      await page.getByLabel(/name the first place/).fill('Cabinet 2');
      await press('How many: more');
      await press(/2 .*into the book, Cabinet 2/i);
      await page.getByText(/are in the book, Cabinet 2/).waitFor();
      const labels = await page.getByLabel('New labels').getByRole('link').allInnerTexts();
      expect(labels).toHaveLength(2);
      const [jug = '', sister = ''] = labels.map((label) => label.replace('-', ''));

      // Their own labels are printed.
      await page.getByRole('link', { name: 'Print their labels' }).click();
      const pdf = page.getByRole('link', { name: /Open the PDF/ });
      await pdf.waitFor();
      const printed = await context.request.get((await pdf.getAttribute('href')) ?? '');
      expect(printed.headers()['content-type']).toContain('application/pdf');
      expect((await printed.body()).subarray(0, 5).toString()).toBe('%PDF-');

      // Found on hand, by its lot.
      await page.goto('/on-hand');
      await page.getByRole('searchbox').fill('k26-114');
      await page
        .getByRole('link', { name: new RegExp(labels[0] ?? '') })
        .first()
        .waitFor();

      // One is opened.
      await page.goto(`/containers/${jug}`);
      await page.getByText('Open it', { exact: true }).click();
      await press('Write that it is open');
      await expect.poll(said).toMatch(/Opened/);

      // Pulled for a client job on a day: Use.
      await addClientJob(page, 'River desk', inDays(10));
      await page.goto('/pull');
      await page
        .getByRole('button', { name: /River desk/ })
        .first()
        .click();
      const own = await ownCode(labels[0] ?? '');
      // The camera films the maker's label all along, so it offers the containers of that product.
      await give(page, way, own);
      if (way === 'camera')
        await page
          .getByRole('button', { name: new RegExp(labels[0] ?? '') })
          .first()
          .click();
      await page.getByRole('status').getByText('Use', { exact: true }).first().waitFor();
      await press('Take some for River desk');
      await page.getByLabel(/Amount out of/).fill('400 g');
      await press(/Take 400 g/);
      await page.getByText('In the book').waitFor();
      await expectLeft(page, jug, /2\.1 kg/);

      // On a later day: Stop, naming the limit, offering the sister.
      await page.goto(`/pull?label=${jug}`);
      await press('Another day of use');
      await page.getByLabel('Day of use').last().fill(inDays(100));
      await press(/Judge it for/);
      await page.getByRole('alert').getByText('Stop', { exact: true }).first().waitFor();
      expect(await said()).toContain(`Good to ${sayDate(addMonths(TODAY, 2), { order: 'day-first', today: TODAY })}`);
      expect(await said()).toMatch(/opened/i);
      await page.getByRole('button', { name: new RegExp(`Take ${labels[1]}`) }).waitFor();
      await expectAccessible(page);

      // Used anyway: a recorded test pour, then a reason, then the amount.
      await press('Use anyway');
      await page.getByText('Passed', { exact: true }).click();
      await press('Record that it passed');
      expect(await said()).toMatch(/note|photo/i);
      await page.getByLabel('What was seen').fill('Hard and clear after three days');
      await press('Record that it passed');
      await page.getByLabel(/Why is it used/).waitFor();
      await press('Go on to the amount');
      expect(await said()).toContain('Write why');
      await page.getByLabel(/Why is it used/).fill('Client agreed in writing');
      await press('Go on to the amount');
      await page.getByLabel(/Amount out of/).fill('250 g');
      await press(/Use it anyway: 250 g/);
      await page.getByText('In the book').waitFor();

      // The movement, the override and the reason are in the history; reversed, the balance is as before.
      await expectLeft(page, jug, /1\.85 kg/);
      const history = page.getByRole('list', { name: 'History' });
      await expect.poll(() => history.innerText()).toContain('Client agreed in writing');
      expect(await history.innerText()).toMatch(/test pour/i);
      await history
        .getByRole('button', { name: /^Reverse/ })
        .first()
        .click();
      await page.getByLabel('Why is it reversed?').fill('Wrong jug');
      await press('Reverse it');
      await expect.poll(() => history.locator('del').count()).toBeGreaterThan(0);
      await expectLeft(page, jug, /2\.1 kg/);
      await expectLeft(page, sister, /2\.5 kg/);
    });
    expect(trouble).toEqual([]);
    expect(await proved(served)).toMatch(/every rule holds/);
  });
});
