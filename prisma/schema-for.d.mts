export function schemaFor(schema: string, store: 'sqlite' | 'postgresql'): string;
