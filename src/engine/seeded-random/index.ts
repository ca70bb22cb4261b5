export { seededRandom, type SeededRandom } from "./seeded-random";
