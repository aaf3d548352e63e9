import fs from 'node:fs';
import path from 'node:path';
import { PrismaBetterSqlite3 } from '@prisma/adapter-better-sqlite3';
import { PrismaPg } from '@prisma/adapter-pg';
import {
  bindMigrationAwareSqlAdapterFactory,
  type SqlMigrationAwareDriverAdapterFactory,
} from '@prisma/driver-adapter-utils';
import { askServer } from '@/prisma/ask-server';
import type { BookFiles } from '@/prisma/book-files';
import { migrationNames, migrationsFolder, type Store } from '@/prisma/migration-names';
import { schemaFor } from '@/prisma/schema-for.mjs';

const root = path.join(import.meta.dirname, '..');
export const schemaPath = path.join(root, 'prisma/schema.prisma');
const filters = { externalTables: [], externalEnums: [] };

type MigrationFile = { path: string; migrationFile: { path: string; content: { tag: 'ok'; value: string } } };

/** The part of Prisma's WebAssembly schema engine that this project calls. */
type SchemaEngine = {
  diff(input: unknown): Promise<{ stdout?: string | null; exitCode: number }>;
  applyMigrations(input: unknown): Promise<{ appliedMigrationNames: string[] }>;
};

/** What this project calls of the engine's generated JavaScript. */
type EngineGlue = {
  SchemaEngine: { new: (datamodels: unknown, log: () => void, adapter: unknown) => Promise<SchemaEngine> };
  __wbg_set_wasm: (exports: WebAssembly.Exports) => void;
};

// Once a process: the glue keeps one instance, and objects of an earlier one would be freed in the memory of the later.
let engineGlue: Promise<EngineGlue> | undefined;

async function loadEngine(): Promise<EngineGlue> {
  const entry = path.join(root, 'node_modules/@prisma/schema-engine-wasm');
  const glue = await import(/* webpackIgnore: true */ path.join(entry, 'schema_engine_bg.js'));
  const bytes = fs.readFileSync(path.join(entry, 'schema_engine_bg.wasm'));
  const { instance } = await WebAssembly.instantiate(bytes, { './schema_engine_bg.js': glue });
  glue.__wbg_set_wasm(instance.exports);
  (instance.exports.__wbindgen_start as () => void)();
  return glue;
}

const storeOf = (files: BookFiles): Store => (files.postgresql === undefined ? 'sqlite' : 'postgresql');

function adapterFor({ database, postgresql }: BookFiles): SqlMigrationAwareDriverAdapterFactory {
  return postgresql === undefined
    ? new PrismaBetterSqlite3({ url: `file:${database}`, timeout: 10_000 })
    : new PrismaPg({ connectionString: postgresql });
}

/**
 * Does something with Prisma's schema engine on a book's database. Its connections are closed afterwards, because while it
 * migrates it holds a file for itself alone. The process needs an explicit exit in the end.
 */
async function withSchemaEngine<T>(files: BookFiles, work: (engine: SchemaEngine) => Promise<T>): Promise<T> {
  const { postgresql } = files;
  engineGlue ??= loadEngine();
  const glue = await engineGlue;
  const schema = schemaFor(fs.readFileSync(schemaPath, 'utf8'), storeOf(files));
  const factory = adapterFor(files);
  const opened: { dispose(): Promise<void> }[] = [];
  const connect = async (how: 'connect' | 'connectToShadowDb') => {
    const connection = await factory[how]();
    // The adapter would send a script statement by statement, cut at every semicolon: sent whole, all of it is done or
    // none (postgresql.org/docs, "Multiple Statements in a Simple Query"), and a function may have a body.
    if (postgresql !== undefined) {
      connection.executeScript = (script) => askServer(postgresql, async (client) => void (await client.query(script)));
    }
    opened.push(connection);
    return connection;
  };
  try {
    const engine: SchemaEngine = await glue.SchemaEngine.new(
      { datamodels: [[schemaPath, schema]] },
      () => {},
      bindMigrationAwareSqlAdapterFactory({
        provider: factory.provider,
        adapterName: factory.adapterName,
        connect: () => connect('connect'),
        connectToShadowDb: () => connect('connectToShadowDb'),
      }),
    );
    return await work(engine);
  } finally {
    for (const connection of opened) await connection.dispose();
  }
}

function migrationsList(store: Store) {
  const folder = migrationsFolder(store);
  const migrationDirectories: MigrationFile[] = migrationNames(store).map((name) => ({
    path: name,
    migrationFile: {
      path: 'migration.sql',
      content: { tag: 'ok', value: fs.readFileSync(path.join(folder, name, 'migration.sql'), 'utf8') },
    },
  }));
  return {
    baseDir: folder,
    lockfile: { path: 'migration_lock.toml', content: `provider = "${store}"` },
    shadowDbInitScript: '',
    migrationDirectories,
  };
}

/** Applies what has not been applied yet and answers the names of what it applied. */
export async function applyMigrations(files: BookFiles): Promise<string[]> {
  const result = await withSchemaEngine(files, (engine) =>
    engine.applyMigrations({ migrationsList: migrationsList(storeOf(files)), filters }),
  );
  return result.appliedMigrationNames;
}

/**
 * The SQL that takes a store from the schema as it stood at the last migration (kept beside it) to the schema as it
 * stands now; empty when they agree. Compared as schemas, because the engine's shadow database does not open through
 * this adapter; over a scratch file whichever store it is for, since the files compared say which.
 */
export async function diffFromLastMigration(scratch: BookFiles, store: Store): Promise<string> {
  const last = migrationNames(store).at(-1);
  const asFiles = (file: string) => [{ path: file, content: schemaFor(fs.readFileSync(file, 'utf8'), store) }];
  const wanted = {
    from: last
      ? { tag: 'schemaDatamodel', files: asFiles(path.join(migrationsFolder(store), last, 'schema.prisma')) }
      : { tag: 'empty' },
    to: { tag: 'schemaDatamodel', files: asFiles(schemaPath) },
    script: true,
    shadowDatabaseUrl: null,
    exitCode: null,
    filters,
  };
  const result = await withSchemaEngine(scratch, (engine) => engine.diff(wanted));
  const sql = result.stdout ?? '';
  return sql.includes('This is an empty migration') ? '' : sql;
}
