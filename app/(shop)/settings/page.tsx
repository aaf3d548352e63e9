import type { Metadata } from 'next';
import { aboutProgram } from '@/app/_server/book/about-program';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { readServing, servingNow } from '@/app/_server/book/serving';
import { readHouse } from '@/app/_server/cuts/read-house';
import { nameOfVisitor, namesOnDevice } from '@/app/_server/who/who-is-writing';
import { Code } from '@/app/_ui/code';
import { Facts } from '@/app/_ui/facts';
import { LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import { Section } from '@/app/_ui/section';
import { DeviceForm } from '@/app/(shop)/settings/_ui/device-form';
import { HouseForm } from '@/app/(shop)/settings/_ui/house-form';
import { NetworkForm } from '@/app/(shop)/settings/_ui/network-form';
import { Proof } from '@/app/(shop)/settings/_ui/proof';
import styles from '@/app/(shop)/settings/_ui/settings.module.css';
import { WorkshopForm } from '@/app/(shop)/settings/_ui/workshop-form';
import { DATA, FONTS, LIBRARIES, type Notice } from '@/app/(shop)/settings/notices';
import { printLengthExact } from '@/shared/units/print-length-exact';

export const metadata: Metadata = { title: 'Settings' };

export default async function SettingsPage() {
  const { book, head } = await bookForPage();
  const [serving, names, otherwise] = await Promise.all([readServing(), namesOnDevice(), nameOfVisitor()]);
  const about = aboutProgram();
  const house = await readHouse(book);
  const sizes = {
    houseLengthNm: printLengthExact(house.lengthNm, head.units),
    houseWidthNm: printLengthExact(house.widthNm, head.units),
    kerfNm: printLengthExact(house.kerfNm, head.units),
  };
  const { name, timeZone, units, dateOrder } = head;
  return (
    <Page title="Settings" context={head.demo ? `${name}, a demo` : name}>
      <Section title="Places, labels, woods">
        <div className={styles.keys}>
          <LinkKey href="/places" variant="ghost">
            Places
          </LinkKey>
          <LinkKey href="/labels" variant="ghost">
            Print labels
          </LinkKey>
          <LinkKey href="/species" variant="ghost">
            Species
          </LinkKey>
        </div>
      </Section>
      <div className={styles.two}>
        <Section title="This workshop">
          <WorkshopForm key={`${name} ${timeZone} ${units} ${dateOrder}`} now={{ name, timeZone, units, dateOrder }} />
          <p className={styles.soft}>Costs are kept in {head.currency}, chosen when the book was begun. That stays.</p>
        </Section>
        <Section title="This device">
          <DeviceForm key={`${names.who} ${names.device}`} now={names} otherwise={otherwise} />
        </Section>
      </div>
      <Section title="Offcuts and the saw">
        <HouseForm key={JSON.stringify(sizes)} now={sizes} prefer={head.units} />
      </Section>
      <div className={styles.two}>
        <Section title="Who can reach the book">
          <NetworkForm now={servingNow()} next={serving.network} />
        </Section>
        <Section title="Proof">
          <p>
            Adds up every entry again, from the first, and compares the result with what the pages show: quantities,
            places, holds, labels, reversals, and the database’s own check.
          </p>
          <Proof />
        </Section>
      </div>
      <Section title="About">
        <div className={styles.facts}>
          <Facts
            facts={[
              { term: 'Program', value: `Flitchbook ${about.version}` },
              {
                term: 'The book',
                value: (
                  <>
                    In the folder <Code>{about.folder}</Code>, on the computer that runs the program: the database and
                    the photos. Copy that whole folder while the program is stopped, and you have a backup.
                  </>
                ),
              },
              {
                term: 'Another book',
                value: (
                  <>
                    Stop the program and start it with another folder: <Code>FLITCHBOOK_DATA=my-shop npm start</Code>.
                    Or move the folder away, and the next start begins an empty one.
                  </>
                ),
              },
              ...(head.demo
                ? [{ term: 'This one', value: 'A demo: every person, maker, slab and tin in it is invented.' }]
                : []),
            ]}
          />
        </div>
      </Section>
      <Section title="Work of others">
        <Notices title="Typefaces" notices={FONTS} />
        <Notices title="Data" notices={DATA} />
        <Notices title="Open-source libraries" notices={LIBRARIES} />
        <p className={styles.soft}>
          The full text of each licence is in the program’s folder, beside the package it belongs to.
        </p>
      </Section>
    </Page>
  );
}

function Notices({ title, notices }: { title: string; notices: readonly Notice[] }) {
  return (
    <div className={styles.notice}>
      <h3>{title}</h3>
      <ul>
        {notices.map(({ name, licence, by }) => (
          <li key={name}>
            {name}: {licence}. {by.replace(/\.$/, '')}.
          </li>
        ))}
      </ul>
    </div>
  );
}
