import { seedDemo } from "../../prisma/seed";

await seedDemo();
// The pool of connections would keep this process for a while.
process.exit();
