import { AsyncLocalStorage } from "node:async_hooks";
import type { PrismaClient } from "@/generated/prisma/client";

const inside = new AsyncLocalStorage<true>();

/**
 * The same client, which refuses a query beside an open transaction. It would take a second connection from the pool
 * while the first is held, and under load all would wait for each other.
 */
export function watchedDatabase(client: PrismaClient): PrismaClient {
  return new Proxy(client, {
    get(target, key) {
      if (inside.getStore()) throw new Error(`“${String(key)}” is asked for beside an open transaction`);
      const member: unknown = Reflect.get(target, key);
      if (key === "$transaction" && typeof member === "function") return inTransaction(member.bind(target));
      return typeof member === "function" ? member.bind(target) : member;
    },
  });
}

type Write = (connection: unknown) => Promise<unknown>;

function inTransaction(run: (write: Write, options: unknown) => Promise<unknown>) {
  return (write: Write, options: unknown) => run((connection) => inside.run(true, () => write(connection)), options);
}
