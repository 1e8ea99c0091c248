import { createSign, generateKeyPairSync } from "node:crypto";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";

const base64 = (value: unknown): string => Buffer.from(JSON.stringify(value)).toString("base64url");

/** A provider that signs whatever it is told to, right except for what `forge` changes; every code is good. */
export async function openForgingProvider(client: string) {
  const { publicKey, privateKey } = generateKeyPairSync("rsa", { modulusLength: 2048 });
  const { privateKey: otherKey } = generateKeyPairSync("rsa", { modulusLength: 2048 });
  const told = {
    claims: {} as Record<string, unknown>,
    header: {} as Record<string, unknown>,
    isOtherKey: false,
    nonce: "",
  };
  const sign = (): string => {
    const now = Math.floor(Date.now() / 1000);
    const claims = {
      iss: issuer,
      sub: "subject-of-ann",
      aud: client,
      iat: now,
      exp: now + 60,
      nonce: told.nonce,
    };
    const header = { alg: "RS256", kid: "key", ...told.header };
    const text = `${base64(header)}.${base64({ ...claims, ...told.claims })}`;
    if (header.alg === "none") return `${text}.`;
    return `${text}.${createSign("RSA-SHA256")
      .update(text)
      .sign(told.isOtherKey ? otherKey : privateKey, "base64url")}`;
  };
  const server = createServer((request, response) => {
    const body = request.url?.startsWith("/.well-known")
      ? {
          ...{ issuer, authorization_endpoint: `${issuer}/auth`, token_endpoint: `${issuer}/token` },
          ...{
            jwks_uri: `${issuer}/jwks`,
            response_types_supported: ["code"],
            subject_types_supported: ["public"],
          },
          id_token_signing_alg_values_supported: ["RS256"],
        }
      : request.url === "/jwks"
        ? { keys: [{ ...publicKey.export({ format: "jwk" }), kid: "key", alg: "RS256", use: "sig" }] }
        : { access_token: "x", token_type: "bearer", expires_in: 60, id_token: sign() };
    response.setHeader("Content-Type", "application/json");
    response.end(JSON.stringify(body));
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const issuer = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  return {
    issuer,
    forge: (what: Partial<typeof told>) =>
      Object.assign(told, { claims: {}, header: {}, isOtherKey: false }, what),
    stop: () =>
      new Promise<void>((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
}
