package org.stillroom.studio.cli;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Help.ColorScheme;
import picocli.CommandLine.Help.IParamLabelRenderer;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;

/** Help in which an option stands apart from what it takes, as every example types it: {@code --sort NAME=AMOUNT}. */
final class Spaced extends Help {
    /** A blank at which no line is broken; it is printed as any other. */
    private static final String APART = "\u00a0";

    /** Returns the help of a command. */
    static String of(CommandLine line, Ansi ansi) {
        return line.setHelpFactory(Spaced::new).getUsageMessage(ansi).replace(APART, " ");
    }

    private Spaced(CommandSpec command, ColorScheme colours) {
        super(command, colours);
    }

    @Override
    public IParamLabelRenderer parameterLabelRenderer() {
        return new Apart(super.parameterLabelRenderer());
    }

    @Override
    public IParamLabelRenderer createDefaultParamLabelRenderer() {
        return new Apart(super.createDefaultParamLabelRenderer());
    }

    private record Apart(IParamLabelRenderer usual) implements IParamLabelRenderer {
        @Override
        public Ansi.Text renderParameterLabel(ArgSpec part, Ansi ansi, List<CommandLine.Help.Ansi.IStyle> styles) {
            Ansi.Text label = usual.renderParameterLabel(part, ansi, styles);
            return label.toString().startsWith("=") ? ansi.new Text(APART).concat(label.substring(1)) : label;
        }

        @Override
        public String separator() {
            return APART;
        }
    }
}
