import type { Metadata } from 'next';
import { LinkKey } from '@/app/_ui/keys';
import { BeginDemo } from '@/app/welcome/_ui/begin-demo';
import { Mark } from '@/app/welcome/_ui/mark';
import styles from '@/app/welcome/welcome.module.css';

export const metadata: Metadata = { title: 'Welcome' };

export default function WelcomePage() {
  return (
    <>
      <header className={styles.head}>
        <Mark />
        <h1 className={styles.name}>Flitchbook</h1>
        <p className={styles.says}>
          The book of a workshop’s wood, and of every tin and jug with a date on it. There is no book here yet.
        </p>
      </header>
      <div className={styles.ways}>
        <section className={styles.way}>
          <h2 className={styles.title}>Begin an empty book</h2>
          <p>For your own workshop. Four questions, then you scan the first thing that comes through the door.</p>
          <LinkKey href="/welcome/begin">Begin an empty book</LinkKey>
        </section>
        <section className={styles.way}>
          <h2 className={styles.title}>Look round a demo workshop</h2>
          <p>
            Everything in it is invented: the people, the makers, the slabs and the tins. Its dates are laid out around
            today, so some of it is fresh and some is past its day.
          </p>
          <BeginDemo />
          <p className={styles.later}>
            To begin your own later: stop the program and start it with another folder,{' '}
            <code>FLITCHBOOK_DATA=my-shop npm start</code>, or move the folder <code>data</code> away.
          </p>
        </section>
      </div>
    </>
  );
}
