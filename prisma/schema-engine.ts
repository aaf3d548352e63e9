import fs from 'node:fs';
import path from 'node:path';
import { PrismaBetterSqlite3 } from '@prisma/adapter-better-sqlite3';
import { bindMigrationAwareSqlAdapterFactory } from '@prisma/driver-adapter-utils';
import { migrationNames, migrationsFolder } from '@/prisma/migration-names';

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

/**
 * Does something with Prisma's schema engine on a SQLite file. Its connections are closed afterwards, because while it
 * migrates it holds the file for itself alone. The process needs an explicit exit in the end.
 */
async function withSchemaEngine<T>(database: string, work: (engine: SchemaEngine) => Promise<T>): Promise<T> {
  engineGlue ??= loadEngine();
  const glue = await engineGlue;
  const schema = fs.readFileSync(schemaPath, 'utf8');
  const factory = new PrismaBetterSqlite3({ url: `file:${database}`, timeout: 10_000 });
  const opened: { dispose(): Promise<void> }[] = [];
  const connect = async (how: 'connect' | 'connectToShadowDb') => {
    const connection = await factory[how]();
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

function migrationsList() {
  const migrationDirectories: MigrationFile[] = migrationNames().map((name) => ({
    path: name,
    migrationFile: {
      path: 'migration.sql',
      content: { tag: 'ok', value: fs.readFileSync(path.join(migrationsFolder, name, 'migration.sql'), 'utf8') },
    },
  }));
  return {
    baseDir: migrationsFolder,
    lockfile: { path: 'migration_lock.toml', content: 'provider = "sqlite"' },
    shadowDbInitScript: '',
    migrationDirectories,
  };
}

/** Applies what has not been applied yet and answers the names of what it applied. */
export async function applyMigrations(database: string): Promise<string[]> {
  const result = await withSchemaEngine(database, (engine) =>
    engine.applyMigrations({ migrationsList: migrationsList(), filters }),
  );
  return result.appliedMigrationNames;
}

/**
 * The SQL that takes the schema as it stood at the last migration (kept beside it) to the schema as it stands now;
 * empty when they agree. Compared as schemas, because the engine's shadow database does not open through this adapter.
 */
export async function diffFromLastMigration(scratchDatabase: string): Promise<string> {
  const last = migrationNames().at(-1);
  const asFiles = (file: string) => [{ path: file, content: fs.readFileSync(file, 'utf8') }];
  const wanted = {
    from: last
      ? { tag: 'schemaDatamodel', files: asFiles(path.join(migrationsFolder, last, 'schema.prisma')) }
      : { tag: 'empty' },
    to: { tag: 'schemaDatamodel', files: asFiles(schemaPath) },
    script: true,
    shadowDatabaseUrl: null,
    exitCode: null,
    filters,
  };
  const result = await withSchemaEngine(scratchDatabase, (engine) => engine.diff(wanted));
  const sql = result.stdout ?? '';
  return sql.includes('This is an empty migration') ? '' : sql;
}
