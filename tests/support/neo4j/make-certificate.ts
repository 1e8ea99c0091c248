import { execFileSync } from "node:child_process";
import { mkdirSync } from "node:fs";
import { join } from "node:path";

/** Makes a key and a certificate that vouches for itself, as `private.key` and `public.crt` of a folder. */
export function makeCertificate(folder: string): void {
  mkdirSync(folder, { recursive: true });
  const subject = ["-subj", "/CN=localhost", "-addext", "subjectAltName=DNS:localhost,IP:127.0.0.1"];
  const files = ["-keyout", join(folder, "private.key"), "-out", join(folder, "public.crt")];
  const key = ["-newkey", "rsa:2048", "-nodes", "-days", "2"];
  execFileSync("openssl", ["req", "-x509", ...key, ...files, ...subject], { stdio: "pipe" });
}
