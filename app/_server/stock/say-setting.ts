/** A meter and what it was set to, in words: "pin meter, set to oak". */
export function saySetting({ meter, speciesSetting }: { meter: string; speciesSetting?: string }): string {
  return [meter, speciesSetting ? `set to ${speciesSetting}` : ''].filter(Boolean).join(', ');
}
