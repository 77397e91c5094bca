// `npm run bench`: the site's work, then cutting plans; with the word cutting, and a number, all or names of sets, cutting plans alone.
if (process.argv[2] !== "cutting") {
  await import("./work.ts");
  process.stdout.write("\nPaper: every PDF of the demo, set from cold\n");
  await import("./paper.ts");
  process.stdout.write(
    "\nCutting plans (two problems of each set; `-- cutting 10` for ten, `-- cutting all` for every one)\n",
  );
}
await import("./cutting.ts");
