import { PrismaPg } from "@prisma/adapter-pg";
import { withoutRowDetails } from "./without-row-details";

type Transaction = Awaited<ReturnType<Awaited<ReturnType<PrismaPg["connect"]>>["startTransaction"]>>;

/**
 * Prisma's way to PostgreSQL on which the queries of a transaction wait for each other.
 *
 * Prisma loads relations that stand side by side at once. A transaction has one connection, and `pg` warns that it will
 * refuse a query on one that is still busy.
 */
export class QueriesInTurn extends PrismaPg {
  override async connect() {
    const adapter = await super.connect();
    const [query, execute] = [adapter.queryRaw.bind(adapter), adapter.executeRaw.bind(adapter)];
    adapter.queryRaw = (asked) => withoutRowDetails(query(asked));
    adapter.executeRaw = (asked) => withoutRowDetails(execute(asked));
    const start = adapter.startTransaction.bind(adapter);
    adapter.startTransaction = async (level) => inTurn(await start(level));
    return adapter;
  }
}

function inTurn(transaction: Transaction): Transaction {
  const query = transaction.queryRaw.bind(transaction);
  const execute = transaction.executeRaw.bind(transaction);
  let last: Promise<unknown> = Promise.resolve();
  const after = <Result>(run: () => Promise<Result>): Promise<Result> => {
    const mine = last.then(run, run);
    last = mine;
    return mine;
  };
  transaction.queryRaw = (asked) => after(() => withoutRowDetails(query(asked)));
  transaction.executeRaw = (asked) => after(() => withoutRowDetails(execute(asked)));
  return transaction;
}
