/** The two systems of units to choose from, in the words of the trade. */
export const UNIT_CHOICES = [
  { value: 'metric', label: 'Metric', hint: 'mm, kg, litres, °C' },
  { value: 'imperial', label: 'Inches', hint: 'inches, lb, fl oz, °F' },
] as const;
