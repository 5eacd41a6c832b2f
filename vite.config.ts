import react from '@vitejs/plugin-react'
import { defineConfig, type Plugin } from 'vite'
import { VitePWA } from 'vite-plugin-pwa'
import packageFile from './package.json' with { type: 'json' }

// `hardstand-source` makes the package imports (#core/…, #units, …) resolve to TypeScript instead of dist.
const conditions = ['hardstand-source', 'module', 'browser', 'development|production']

/**
 * Screens name and explain a cell by the words of the app. What the tables of fields say of it is for the reference page
 * and the schema, which no page makes.
 */
const withoutFieldDocs = (): Plugin => ({
  name: 'without field docs',
  transform: (code, id) =>
    /\/src\/(job\/[a-z-]+-fields|catalogue\/[a-z-]+)\.ts$/.test(id)
      ? { code: code.replaceAll(/\bdoc:\s*(['"`])(?:(?!\1)[^\\]|\\.)*\1/g, "doc: ''"), map: null }
      : undefined,
})

export default defineConfig({
  root: 'src/web',
  publicDir: 'public',
  resolve: { conditions },
  define: { __APP_VERSION__: JSON.stringify(packageFile.version) },
  build: {
    outDir: '../../dist/web',
    emptyOutDir: true,
    target: 'es2022',
    // The server's policy allows no inline data: every asset is a file of its own.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
  worker: { format: 'es', plugins: () => [withoutFieldDocs()] },
  plugins: [
    react(),
    withoutFieldDocs(),
    VitePWA({
      strategies: 'generateSW',
      registerType: 'prompt',
      injectRegister: false,
      manifest: {
        name: 'Hardstand',
        short_name: 'Hardstand',
        description: 'Plans the refit of a glass-fibre boat, ashore and without a signal.',
        display: 'standalone',
        start_url: '/',
        background_color: '#DCE5DE',
        theme_color: '#15202B',
        icons: [{ src: '/icon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' }],
      },
      workbox: {
        // Everything that was emitted; a test holds this list against the folder.
        globPatterns: ['**/*.{js,css,html,svg,woff,woff2,yaml,csv,json,webmanifest}'],
        maximumFileSizeToCacheInBytes: 3 * 1024 * 1024,
        navigateFallback: '/index.html',
        navigateFallbackDenylist: [/^\/api\//, /^\/sync/],
        cleanupOutdatedCaches: true,
      },
    }),
  ],
})
