// Plain JavaScript: the steps before anything is compiled use it too.

/**
 * The schema as the given store reads it. One schema is kept, written for SQLite; PostgreSQL's differs in the name of
 * the provider alone.
 * @param {string} schema the text of prisma/schema.prisma, now or as kept beside a migration
 * @param {'sqlite' | 'postgresql'} store
 */
export function schemaFor(schema, store) {
  const provider = /provider = "sqlite"/;
  if (!provider.test(schema)) throw new Error('The schema does not name its store as SQLite.');
  return schema.replace(provider, `provider = "${store}"`);
}
