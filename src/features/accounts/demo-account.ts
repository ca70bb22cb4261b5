/** The invented designer whose sign-in stands on the sign-in page of a demo. */
export const DEMO_ACCOUNT = {
  email: "demo@sizewright.example",
  password: "try-the-demo",
  name: "Demo designer (invented)",
} as const;
