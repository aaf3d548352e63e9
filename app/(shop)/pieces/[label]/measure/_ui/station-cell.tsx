import { Input } from '@mantine/core';
import fields from '@/app/_ui/field/field.module.css';
import styles from '@/app/(shop)/pieces/[label]/measure/_ui/measure.module.css';

export interface StationCellProps {
  /** Its place in its rows: `2.left`. */
  cell: string;
  /** "Station 3, to the left edge" */
  label: string;
  value: string;
  isWrong: boolean;
  /** It looks like a slip. */
  isDoubted: boolean;
  /** The id of what is said of it. */
  said: string | undefined;
  onType: (text: string) => void;
  onEnter: () => void;
  onFocus: () => void;
  onBlur: () => void;
}

/** One number of a station. What stands in it is selected with the focus, so that typing takes its place. */
export function StationCell({ cell, label, value, isWrong, isDoubted, said, ...on }: StationCellProps) {
  return (
    <Input
      value={value}
      error={isWrong}
      classNames={{ wrapper: styles.cell, input: fields.input }}
      attributes={{
        input: {
          'aria-label': label,
          'aria-invalid': isWrong || undefined,
          'aria-describedby': said,
          'data-cell': cell,
          'data-doubt': isDoubted || undefined,
        },
      }}
      autoComplete="off"
      autoCapitalize="off"
      spellCheck={false}
      inputMode="decimal"
      enterKeyHint="next"
      maxLength={24}
      onChange={(typed) => on.onType(typed.currentTarget.value)}
      onKeyDown={(press) => {
        if (press.key !== 'Enter' || press.nativeEvent.isComposing) return;
        press.preventDefault();
        on.onEnter();
      }}
      onFocus={(focus) => {
        on.onFocus();
        focus.currentTarget.select();
      }}
      onBlur={on.onBlur}
    />
  );
}
