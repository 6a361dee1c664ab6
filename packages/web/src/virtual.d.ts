declare module 'virtual:sheet.css';
