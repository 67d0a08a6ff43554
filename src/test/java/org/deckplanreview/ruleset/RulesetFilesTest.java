package org.deckplanreview.ruleset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RulesetFilesTest {

    @Test
    void the_index_lists_the_files_that_are_there() throws IOException {
        assertThat(RulesetFiles.ofClassPath().list())
                .isEqualTo(RulesetFiles.ofDirectory(Path.of("rulesets")).list());
    }

    @Test
    void every_file_in_the_index_can_be_read() throws IOException {
        RulesetFiles files = RulesetFiles.ofClassPath();
        for (String path : files.list()) {
            try (InputStream in = files.open(path)) {
                assertThat(in.readAllBytes())
                        .isEqualTo(Files.readAllBytes(Path.of("rulesets").resolve(path)));
            }
        }
    }

    @Test
    void a_file_that_is_not_there_is_told() {
        assertThatThrownBy(() -> RulesetFiles.ofClassPath().open("nowhere/2000.yaml"))
                .isInstanceOf(FileNotFoundException.class)
                .hasMessageContaining("nowhere/2000.yaml");
    }

    @Test
    void a_directory_lists_yaml_and_the_register_only(@TempDir Path directory) throws IOException {
        Files.createDirectories(directory.resolve("land"));
        for (String path : List.of("land/2024.yaml", "land/2025.yml", "README.md", "released.txt", "index.txt")) {
            Files.writeString(directory.resolve(path), "");
        }
        assertThat(RulesetFiles.ofDirectory(directory).list())
                .containsExactly("land/2024.yaml", "land/2025.yml", "released.txt");
    }

    @Test
    void a_directory_that_is_not_there_is_a_fault(@TempDir Path directory) {
        LoadResult result =
                RulesetLoader.load(RulesetFiles.ofDirectory(directory.resolve("none")), TestVocabulary.SMALL);
        assertThat(result).isInstanceOf(LoadResult.Faulty.class);
        assertThat(((LoadResult.Faulty) result).faults().get(0).detail()).isEqualTo("The rulesets cannot be listed");
    }

    @Test
    void a_file_with_another_ending_is_a_fault(@TempDir Path directory) throws IOException {
        Files.createDirectories(directory.resolve("land"));
        Files.writeString(directory.resolve("land/2025.yml"), "");
        LoadResult result = RulesetLoader.load(RulesetFiles.ofDirectory(directory), TestVocabulary.SMALL);
        assertThat(((LoadResult.Faulty) result).faults().get(0).file()).isEqualTo("land/2025.yml");
    }
}
