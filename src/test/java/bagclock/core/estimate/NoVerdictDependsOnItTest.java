package bagclock.core.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bagclock.core.heat.Assess;
import bagclock.core.heat.ManyAnswers;
import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** The answers are the same, word for word, in a program from which the model was taken out. */
class NoVerdictDependsOnItTest {
    /** Loads the product anew, but for the model. */
    private static final class WithoutTheModel extends URLClassLoader {
        WithoutTheModel() {
            super(new URL[] {placeOf(Assess.class), placeOf(ManyAnswers.class)});
        }

        private static URL placeOf(Class<?> type) {
            return type.getProtectionDomain().getCodeSource().getLocation();
        }

        @Override
        protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
            if (name.startsWith("bagclock.core.diffusion.") || name.startsWith("bagclock.core.estimate.")) {
                throw new ClassNotFoundException(name);
            } else if (name.startsWith("bagclock.")) {
                Class<?> loaded = findLoadedClass(name);
                return loaded != null ? loaded : findClass(name);
            }
            return super.loadClass(name, resolve);
        }
    }

    @Test
    void answersAreTheSameWithoutTheModel() throws ReflectiveOperationException, IOException {
        try (WithoutTheModel loader = new WithoutTheModel()) {
            Object without = loader.loadClass(ManyAnswers.class.getName())
                    .getConstructor()
                    .newInstance();
            assertThat(without).isNotInstanceOf(ManyAnswers.class);
            List<?> answers = (List<?>) ((Supplier<?>) without).get();
            assertThat(answers).hasSizeGreaterThan(100).isEqualTo(new ManyAnswers().get());
            assertThatThrownBy(() -> loader.loadClass(Estimates.class.getName()))
                    .isInstanceOf(ClassNotFoundException.class);
        }
    }
}
