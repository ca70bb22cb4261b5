const ROWS_AT_ONCE = 500;
const BEFORE_ALL = "00000000-0000-0000-0000-000000000000";

/**
 * Rows of a table by their ids, however many there are, without holding all of them.
 *
 * @param read the next rows after an id, at most so many.
 */
export async function* inBatches<Row extends { readonly id: string }>(
  read: (page: { readonly where: { readonly id: { readonly gt: string } }; readonly take: number }) => Promise<Row[]>,
): AsyncGenerator<Row> {
  let after = BEFORE_ALL;
  for (;;) {
    const rows = await read({ where: { id: { gt: after } }, take: ROWS_AT_ONCE });
    yield* rows;
    const last = rows.at(-1);
    if (last === undefined || rows.length < ROWS_AT_ONCE) return;
    after = last.id;
  }
}
