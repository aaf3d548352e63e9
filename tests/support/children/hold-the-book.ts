/** Another program that holds the database given for itself until it is told to let go. */
import Database from 'better-sqlite3';

const [file = '', how = 'IMMEDIATE'] = process.argv.slice(2);
const db = new Database(file);
db.exec(`BEGIN ${how}`);
process.stdout.write('held\n');
process.stdin.once('data', () => {
  db.exec('ROLLBACK');
  db.close();
  process.exit(0);
});
