/** The invented designer of the demo, offered on its sign-in page. */
export const DEMO_ACCOUNT = {
  email: "demo@sizewright.example",
  password: "try-the-demo",
  name: "Demo designer (invented)",
} as const;
