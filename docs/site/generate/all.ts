// Writes the pages that are made from data, before the site is built: `npm run docs`. None of them is committed.
