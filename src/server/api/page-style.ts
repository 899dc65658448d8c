/** How the page of the API looks: paper and ink, one column that a phone can show. */
export const PAGE_STYLE = `
:root { color-scheme: light dark; }
body { max-width: 60rem; margin: 2rem auto; padding: 0 1rem; font: 1rem/1.5 Georgia, serif; }
h2 { border-bottom: 1px solid; margin-top: 3rem; }
h3 { margin-bottom: 0; font-size: 1.05rem; }
h3 code { font-weight: normal; }
nav a { display: inline-block; padding: 0.2rem 0.5rem 0.2rem 0; }
pre { overflow-x: auto; padding: 0.6rem 0.8rem; border: 1px solid; border-radius: 0.3rem; font-size: 0.85rem; }
td, th { text-align: left; padding: 0.1rem 1.5rem 0.1rem 0; }
`;
