import { defineConfig } from 'vitest/config'

// `hardstand-source` makes the package imports (#core/…, #units, …) resolve to TypeScript instead of dist.
const conditions = ['hardstand-source', 'module', 'node', 'development|production']

// The test script of continuous integration counts the tests from this file.
const report = process.env.HARDSTAND_TEST_REPORT

// Rooms that keep no state of their own share one module graph (fast); the rest run isolated.
const pure = [
  'src/{core,units,words,catalogue,job,replica,plan,sums,papers}/**/*.test.ts',
  'test/published/**/*.test.ts',
]

const seed = Number(process.env.HARDSTAND_TEST_SEED ?? 20270412)

const shared = { resolve: { conditions }, ssr: { resolve: { conditions } } }

export default defineConfig({
  ...shared,
  test: {
    ...(report ? { reporters: ['default', ['json', { outputFile: report }]] } : {}),
    sequence: { shuffle: { files: true }, seed },
    projects: [
      {
        ...shared,
        test: { name: 'pure', include: pure, isolate: false, setupFiles: ['test/setup.ts'] },
      },
      {
        ...shared,
        test: {
          name: 'isolated',
          include: [
            'src/{intake,store,feeds,server,cli,web}/**/*.test.{ts,tsx}',
            'test/**/*.test.ts',
            'scripts/**/*.test.ts',
            'bench/**/*.test.ts',
          ],
          exclude: ['test/published/**', 'test/browser/**'],
          setupFiles: ['test/setup.ts'],
          testTimeout: 120_000,
        },
      },
      {
        ...shared,
        test: {
          name: 'browser',
          include: ['test/browser/**/*.test.ts'],
          setupFiles: ['test/setup.ts'],
          // One browser at a time, after everything else: what it waits for has limits of time.
          fileParallelism: false,
          maxWorkers: 1,
          sequence: { groupOrder: 1 },
          testTimeout: 90_000,
          hookTimeout: 60_000,
        },
      },
    ],
  },
})
