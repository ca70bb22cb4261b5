/** The first line of a message; without a name where it is not known. */
export function greeting(name: string): string {
  return name === "" ? "Hello," : `Hello ${name},`;
}
