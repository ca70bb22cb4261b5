import type { NextConfig } from "next";

const config: NextConfig = {
  poweredByHeader: false,
  // src/start/web-server.ts logs requests, without their queries.
  logging: { incomingRequests: false },
  // npm run validate checks the types of every file, these among them.
  typescript: { ignoreBuildErrors: true },
  serverExternalPackages: ["@node-rs/argon2", "pg", "pino"],
  experimental: { serverActions: { bodySizeLimit: "21mb" } },
};

export default config;
