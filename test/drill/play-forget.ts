// Run by test/drill.ts in a process of its own, so that what it logs is searched, too.
import { writeFileSync } from "node:fs";
import { pool } from "@/server/database";
import { playForget } from "./forget";

const { DRILL_MARKER: marker = "", DRILL_RESULT: result = "", SIZEWRIGHT_FOLDER: folder = "" } = process.env;
const WAIT_MS = 120_000;

const searched = await playForget({ marker, photos: `${folder}/photos`, waitMs: WAIT_MS });
writeFileSync(result, JSON.stringify(searched));
await pool().end();
process.exit();
