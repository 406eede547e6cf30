import { randomBytes } from "node:crypto";
import { request as forwardRequest, type IncomingHttpHeaders } from "node:http";
import { createServer, type Server } from "node:https";
import { freePort } from "../../packages/database/src/setup/index";
import { type LocalCertificate, localCertificate } from "./local-authority";
import { type ProductionServer, serveProduction } from "./serve-production";
import { namesFor, type serviceAddress } from "./service-address.mjs";
import { FRONT_HEADER } from "./trusted-forwarding.mjs";

const AUTHORITY_PATH = "/local-authority.crt";

/** Serves https to the workshop's network, in front of a web server that only this machine can reach. */
export async function serveTablets(
  folder: string,
  env: Record<string, string>,
  address: ReturnType<typeof serviceAddress>,
  say: (line: string) => void,
): Promise<ProductionServer> {
  const certificate = await localCertificate(folder, namesFor(address.host), new Date());
  const inner = await freePort();
  const secret = randomBytes(32).toString("base64url");
  const inside = { host: "127.0.0.1", port: inner };
  const web = await serveProduction({ ...env, BUILDPROOF_FRONT_SECRET: secret }, inside);
  try {
    const front = await listen(certificate, { port: inner, secret }, address);
    for (const line of trustInstructions(address.url, certificate.fingerprint)) say(line);
    return {
      ended: web.ended,
      async stop() {
        front.closeAllConnections();
        front.close();
        await web.stop();
      },
    };
  } catch (error) {
    await web.stop();
    throw error;
  }
}

function listen(
  certificate: LocalCertificate,
  inner: { readonly port: number; readonly secret: string },
  { host, port }: { host: string; port: number },
): Promise<Server> {
  const front = createServer({ key: certificate.key, cert: certificate.chain }, (request, response) => {
    if (request.url === AUTHORITY_PATH) {
      response.writeHead(200, { "Content-Type": "application/x-x509-ca-cert", "Cache-Control": "no-store" });
      response.end(certificate.authority);
      return;
    }
    const onward = forwardRequest(
      {
        host: "127.0.0.1",
        port: inner.port,
        method: request.method,
        path: request.url,
        headers: {
          ...request.headers,
          // What a caller claims about its own way here is replaced by what we see.
          [FRONT_HEADER]: inner.secret,
          "x-forwarded-for": request.socket.remoteAddress ?? "",
          "x-forwarded-proto": "https",
          "x-forwarded-host": request.headers.host ?? "",
        },
      },
      (answer) => {
        response.writeHead(answer.statusCode ?? 502, headersFor(request.headers.host, answer.headers));
        answer.pipe(response);
      },
    );
    onward.once("error", () => {
      if (!response.headersSent) response.writeHead(502, { "Content-Type": "text/plain; charset=utf-8" });
      response.end("Buildproof does not answer just now. Wait a moment and load the page again.");
    });
    response.once("close", () => onward.destroy());
    request.pipe(onward);
  });
  return new Promise((resolve, reject) => {
    front.once("error", reject);
    front.listen(port, host, () => resolve(front));
  });
}

/** "Always https" for localhost would also hit every other service of this machine. */
function headersFor(host: string | undefined, headers: IncomingHttpHeaders): IncomingHttpHeaders {
  if (!host?.startsWith("localhost")) return headers;
  const { "strict-transport-security": _dropped, ...kept } = headers;
  return kept;
}

function trustInstructions(url: string, fingerprint: string): string[] {
  return [
    `Tablets reach it at ${url} after they trust this workshop's own certificate authority, once each:`,
    `  1. On the tablet open ${url}${AUTHORITY_PATH} (go past the browser's warning) and save the file.`,
    "  2. Android: Settings, Security, Encryption and credentials, Install a certificate, CA certificate.",
    "     iPad: Settings, Profile downloaded, Install; then General, About, Certificate trust settings, switch it on.",
    `  3. Compare the fingerprint before you agree: ${fingerprint}`,
  ];
}
