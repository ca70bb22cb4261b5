import "server-only";
import { PrismaPg } from "@prisma/adapter-pg";
import { PrismaClient } from "@/generated/prisma/client";
import { environment } from "./environment";

declare global {
  var heldDatabase: PrismaClient | undefined;
}

function connect(): PrismaClient {
  return new PrismaClient({ adapter: new PrismaPg({ connectionString: environment().DATABASE_URL }) });
}

/** The one client of this process, connected at first use; kept across reloads in development. */
export function database(): PrismaClient {
  globalThis.heldDatabase ??= connect();
  return globalThis.heldDatabase;
}
