import { Key } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import type { Scan } from '@/app/_ui/scanner/scan';
import { showCode } from '@/app/_ui/scanner/show-code';
import styles from '@/app/(shop)/arrive/_ui/arrive.module.css';
import type { Problem } from '@/shared/result/answer';

/** The book could not be asked: the scans are kept, and one press asks again. */
export function NotAsked({
  scans,
  trouble,
  onAgain,
  onDrop,
}: {
  scans: readonly Scan[];
  /** What the book says is wrong, where it could be reached. */
  trouble?: Problem;
  onAgain: () => void;
  onDrop: () => void;
}) {
  const one = scans.length === 1;
  return (
    <PlainError
      happened={
        one ? 'Could not ask the book about this scan.' : `Could not ask the book about these ${scans.length} scans.`
      }
      kept={`${one ? 'It is' : 'They are'} kept here, and nothing was written.`}
      toDo={
        <>
          <span className={styles.code}>{scans.map((scan) => showCode(scan.text)).join(', ')}</span>
          <br />
          {trouble ? `${trouble.what} ${trouble.todo}` : 'Come back into Wi-Fi and try again.'}
        </>
      }
    >
      <Key onClick={onAgain}>Try again</Key>
      <Key variant="ghost" onClick={onDrop}>
        {one ? 'Drop the scan' : 'Drop the scans'}
      </Key>
    </PlainError>
  );
}
