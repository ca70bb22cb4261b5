import type { NextConfig } from "next";

/** Pages of a call whose address changed, so that bookmarks still lead there. */
const MOVED_CALL_PAGES = {
  doubtful: "mistakes",
  gaps: "differences",
  opening: "set-up",
  places: "sizes",
  testers: "habits",
};

const config: NextConfig = {
  poweredByHeader: false,
  // src/start/web-server.ts compresses.
  compress: false,
  // src/start/web-server.ts logs requests, without their queries.
  logging: { incomingRequests: false },
  // npm run validate checks the types of every file, these among them.
  typescript: { ignoreBuildErrors: true },
  serverExternalPackages: ["@node-rs/argon2", "pg", "pino"],
  redirects: async () => [
    ...Object.entries(MOVED_CALL_PAGES).map(([from, to]) => ({
      source: `/calls/:callId/${from}`,
      destination: `/calls/:callId/${to}`,
      permanent: true,
    })),
    { source: "/testing/:testerId/kept", destination: "/testing/:testerId/your-data", permanent: true },
  ],
  experimental: { serverActions: { bodySizeLimit: "21mb" } },
};

export default config;
