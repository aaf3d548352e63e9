/** The database belongs to another program. */
export class NotABookError extends Error {
  constructor() {
    super('The database has tables, but none of them is a record of migrations.');
  }
}
