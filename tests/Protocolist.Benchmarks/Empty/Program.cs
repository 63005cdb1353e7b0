// The floor under a start: a program that says one line.
System.Console.Out.WriteLine("nothing");
