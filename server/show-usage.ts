/** Shows how a command is called. Exit status 0 if that was asked for, 2 if its arguments are not as they have to be. */
export function showUsage(usage: string): void {
  process.stderr.write(usage);
  process.exitCode = process.argv.includes("--help") ? 0 : 2;
}
