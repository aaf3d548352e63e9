import type { Metadata } from 'next';
import { headers } from 'next/headers';
import Link from 'next/link';
import { guessSetUp } from '@/app/_server/book/guess-set-up';
import { BeginForm } from '@/app/welcome/_ui/begin-form';
import styles from '@/app/welcome/welcome.module.css';
import { currencyChoices } from '@/shared/units/currency-choices';

export const metadata: Metadata = { title: 'Begin an empty book' };

export default async function BeginPage() {
  const guess = guessSetUp((await headers()).get('accept-language'));
  const currencies = currencyChoices().map(({ code, name }) => ({ value: code as string, label: `${code}  ${name}` }));
  return (
    <div className={styles.form}>
      <Link href="/welcome" className={styles.back}>
        <span aria-hidden="true">← </span>Back to the two ways
      </Link>
      <h1 className={styles.title}>Begin an empty book</h1>
      <BeginForm guess={guess} currencies={currencies} />
    </div>
  );
}
