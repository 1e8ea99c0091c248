import { readConfig } from "./config.ts";
import { isProblem } from "./domain/problem.ts";
import { openStore } from "./open-data.ts";
import { refuse } from "./refuse.ts";
import { runCommand } from "./run-command.ts";
import { openSecrets } from "./secrets/open-secrets.ts";
import { inviteLostOwner } from "./use-cases/people/invite.ts";
import { isRefusal } from "./use-cases/refusal.ts";

/**
 * Tells a secret, for a day and once, by which whoever can run a command on this machine makes an account of an owner: where the only
 * one lost the password or left. Exit status: 0, or 2 for a refusal.
 */
async function main(): Promise<void> {
  const config = readConfig(process.env);
  if (!("dataFolder" in config)) return refuse(...config);
  const store = await openStore(config, { readOnly: false });
  if (isProblem(store)) return refuse(store);
  try {
    const ports = { store, secrets: openSecrets(), now: () => new Date().toISOString() };
    const invited = await inviteLostOwner(ports);
    if (isRefusal(invited)) return refuse(...invited.refused);
    process.stdout.write(`${invited.secret}\n`);
    process.stderr.write(
      `Open /set-up, give this secret, and choose name and password. It serves once, until ${invited.until}; the audit tells that it was made.\n`,
    );
  } finally {
    await store.close();
  }
}

await runCommand(main);
