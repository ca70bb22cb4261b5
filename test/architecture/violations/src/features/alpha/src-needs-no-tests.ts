export { FIXTURE } from "../../../test/fixture";
