export { database } from "../../server/database";
