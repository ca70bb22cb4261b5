import type { NextConfig } from "next";

const config: NextConfig = {
  poweredByHeader: false,
  // src/start/web-server.ts logs requests, without their queries.
  logging: { incomingRequests: false },
  serverExternalPackages: ["@node-rs/argon2", "pg", "pino", "pg-boss"],
  experimental: { serverActions: { bodySizeLimit: "21mb" } },
};

export default config;
