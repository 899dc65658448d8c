/**
 * An orders file in which many lines are bad, each in its own way, between good ones: what a maker gets when
 * a spreadsheet was filled in by several hands. Semicolons, as many spreadsheets write.
 */
export const demoFaultyOrders = (): string =>
  `${[
    'Order;Player;Qty;Due date;Set;Gauges;Material;Scale length;Tuning;Likes;Wishes',
    'F-1;Amala Thistlecroft;2;2027-03-05;Meadow six, 10;;;;;;',
    'F-2;Brinek Marrowmere;two;2027-03-05;Meadow six, 10;;;;;;',
    'F-3;Corris Underholt;1;03/04/2027;Meadow six, 10;;;;;;',
    'F-4;Delvo Barleystead;1;2027-03-05;Medow six 10;;;;;;',
    'F-5;Emimin Copperley;1;2027-03-05;;10-13-17-26-36-0.46;nickel-plated steel;;;;',
    'F-6;Fendra Quarrelbeck;1;2027-03-05;;10-13-17-26-36-46;unobtainium;;;;',
    'F-7;Gwisel Winnowcroft;1;2027-03-05;;10-13-17-26-36-97;phosphor bronze;;;;',
    'F-8;Halla Fallowmere;1;2027-03-05;;;nickel-plated steel;34 in;E A D G B E;Meadow six, 10;string 1 = 10',
    'F-9;Ilonek Thistleholt;1;2027-03-05;;;;;;;',
    'F-10;Jorris Underley;1;2027-03-05;Meadow six, 10;10-13-17-26-36-46;nickel-plated steel;;;;',
    'F-11;Amavo Barleycroft;0;2027-03-05;Meadow six, 10;;;;;;',
    'F-1;Amala Thistlecroft;2;2027-03-05;Meadow six, 10;;;;;;',
    'F-12;Brimin Copperstead;1;2027-03-05;;;nickel-plated steel;25.5 in;D A D H A D;Meadow six, 10;',
    'F-13;Cordra Quarrelmere;1;2027-03-05;;;nickel-plated steel;25.5 in;D A D G A D;;',
    '"F-14;Delsel Winnowholt;1;2027-03-05;Meadow six, 10;;;;;;',
    'F-15;Emiris Fallowley;1;2027-03-05;Meadow six, 10;;;;;;;;surplus',
    'F-16;Fenla Thistlebeck;3;2027-03-08;Hazel bronze, 12;;;;;;',
  ].join('\n')}\n`;
