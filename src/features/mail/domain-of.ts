/** The domain of a sender such as `Sizewright <mail@sizes.example>`, which is also the one that signs. */
export function domainOf(sender = ""): string {
  return sender.split("@").at(-1)?.replace(/>$/, "") ?? "";
}
