import { expect, it } from "vitest";
import { pool } from "@/server/database";

/** Foreign keys whose columns, in any order, are not the first ones of an index; a partial index finds not every row. */
const WITHOUT_INDEX = `
  SELECT k.conname AS name
    FROM pg_constraint k
   WHERE k.contype = 'f' AND k.connamespace = 'public'::regnamespace
     AND NOT EXISTS (
       SELECT FROM pg_index i
        WHERE i.indrelid = k.conrelid AND i.indpred IS NULL
          AND (SELECT array_agg(column_number ORDER BY column_number)
                 FROM unnest(i.indkey::int2[]) WITH ORDINALITY AS listed (column_number, place)
                WHERE place <= cardinality(k.conkey))
              = (SELECT array_agg(column_number ORDER BY column_number) FROM unnest(k.conkey) AS column_number))
   ORDER BY 1`;

it("finds what refers to a row by an index, whichever row it is", async () => {
  const { rows } = await pool().query(WITHOUT_INDEX);
  expect(rows).toEqual([]);
});

it("notices a key that was given no index", async () => {
  await pool().query("CREATE TABLE forgetful (call_id uuid REFERENCES call (id))");
  const { rows } = await pool().query(WITHOUT_INDEX);
  await pool().query("DROP TABLE forgetful");
  expect(rows).toEqual([{ name: "forgetful_call_id_fkey" }]);
});
