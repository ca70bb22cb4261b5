/** The same type with every property and list read-only, all the way down. */
export type DeepReadonly<Value> = Value extends readonly [infer First, infer Second]
  ? readonly [DeepReadonly<First>, DeepReadonly<Second>]
  : Value extends readonly (infer Item)[]
    ? readonly DeepReadonly<Item>[]
    : Value extends object
      ? { readonly [Key in keyof Value]: DeepReadonly<Value[Key]> }
      : Value;
