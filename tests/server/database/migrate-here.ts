import { migrate } from '../../../src/lib/server/database/migrate.ts';
import { openDatabase } from '../../../src/lib/server/database/open.ts';

/** One of two servers that start together on a new database. */
const database = await openDatabase(JSON.parse(process.argv[2] ?? ''));
await migrate(database);
await database.destroy();
