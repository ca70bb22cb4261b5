import { startOwnPostgres } from "../../src/start/own-postgres";

const [folder] = process.argv.slice(2);
if (folder === undefined) throw new Error("Name a folder.");
const { url } = await startOwnPostgres({ folder });
console.log(url);
setInterval(() => undefined, 1_000);
