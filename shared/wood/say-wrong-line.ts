import type { WrongLine } from '@/shared/wood/read-air-lines';

const WHY: Record<WrongLine['why'], string> = {
  'too-few': 'a line is day, temperature, humidity',
  date: 'its day does not read',
  ahead: 'its day is still to come',
  temperature: 'its temperature does not read, or no wood is kept in such air',
  humidity: 'its humidity is not from 0 to 99.9 %',
};

/** A line of a logger that does not read, in a sentence. Line 3 without a humidity gives “Line 3: a line is day, temperature, humidity.” */
export function sayWrongLine({ nr, why }: WrongLine): string {
  return `Line ${nr}: ${WHY[why]}.`;
}
