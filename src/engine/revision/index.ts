export { adjustInput } from "./adjust-input";
export { expectations, type Expectation } from "./expectations";
