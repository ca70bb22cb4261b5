export { ROUTE } from "../../app/route";
