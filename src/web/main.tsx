import { MantineProvider } from '@mantine/core';
import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { RouterProvider } from '@tanstack/react-router';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { SessionProvider } from './api/session.js';
import { THEME } from './look/index.js';
import { keepShell } from './outbox/keep-shell.js';
import { router } from './router.js';
import { SightProvider } from './sight/sight.js';
import { LanguageProvider } from './words/language.js';

const place = document.getElementById('page');
if (!place) throw new Error('Broken promise inside Tautwork: the page has no place to stand');

/** Live events say what changed; a minute's age asks anew where they did not come. */
const questions = new QueryClient({
  defaultOptions: {
    queries: { staleTime: 60_000, retry: false, refetchOnWindowFocus: true, networkMode: 'always' },
  },
});

createRoot(place).render(
  <StrictMode>
    <MantineProvider
      theme={THEME}
      defaultColorScheme="auto"
      // Both would write style elements into the page, which the server does not allow.
      withCssVariables={false}
      withGlobalClasses={false}
    >
      <LanguageProvider language="en">
        <QueryClientProvider client={questions}>
          <SessionProvider>
            <SightProvider>
              <RouterProvider router={router} />
            </SightProvider>
          </SessionProvider>
        </QueryClientProvider>
      </LanguageProvider>
    </MantineProvider>
  </StrictMode>,
);

keepShell();
