import { openBrowser, visit, expectAccessible, expectNoSideways, PHONE, DESK } from './support/browser';
const browser = await openBrowser();
let slab = ''; let place = '';
for (const [name, size, scheme] of [['pl', PHONE, 'light'], ['dd', DESK, 'dark'], ['pd', PHONE, 'dark'], ['dl', DESK, 'light']] as const) {
  const { page, context, trouble } = await visit(browser, 'http://127.0.0.1:4491', { size, scheme });
  page.setDefaultTimeout(15000);
  if (!slab) {
    await page.goto('/on-hand?show=wood&q=walnut', { waitUntil: 'networkidle' });
    slab = (await page.locator('a[href^="/pieces/S"]').nth(1).getAttribute('href')) ?? '';
  }
  await page.goto(slab, { waitUntil: 'networkidle' });
  if (!place) place = (await page.locator('a[href^="/places/P"]').first().getAttribute('href')) ?? '';
  for (const t of ['Drying', 'As a top', 'Flattening']) await page.locator('summary', { hasText: t }).first().click();
  await page.getByLabel('Cup', { exact: false }).first().fill('4 mm');
  await page.getByLabel('Cut first to width').fill('400');
  await page.getByLabel('Cut first to length').fill('1500');
  await page.getByText('Quarter sawn', { exact: true }).first().click();
  await page.getByText('Read its moisture', { exact: true }).click();
  await page.waitForTimeout(400);
  try { await expectAccessible(page); await expectNoSideways(page); } catch (e) { console.log('AXE', name, JSON.stringify((e as { actual?: unknown }).actual)); }
  const at = async (text: string, nr: string) => {
    await page.locator('summary', { hasText: text }).first().evaluate((e) => e.scrollIntoView());
    await page.screenshot({ path: `/tmp/dryshots/${name}-${nr}.png` });
  };
  await at('Drying', '1'); await at('As a top', '2'); await at('Flattening', '3'); await at('Read its moisture', '4');
  await page.goto(place, { waitUntil: 'networkidle' });
  await page.getByRole('heading', { name: 'The air here' }).evaluate((e) => e.scrollIntoView());
  await page.screenshot({ path: `/tmp/dryshots/${name}-5.png` });
  console.log(name, slab, place, trouble);
  await context.close();
}
await browser.close();
